#include "command/command.h"
#include "intake/picture_memory.h"

int main(int argc, char** argv) {
    kempt::intake::use_large_pages();
    return kempt::command::run(argc, argv);
}
