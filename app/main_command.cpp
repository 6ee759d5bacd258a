#include "command/command.h"

int main(int argc, char** argv) {
    return kempt::command::run(argc, argv);
}
