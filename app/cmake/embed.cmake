# cmake -DIN=file -DOUT=file.cpp -DHEADER=h -DNAMESPACE=ns -DNAME=symbol -P embed.cmake : a file as a C++ byte array.
file(READ ${IN} hex HEX)
string(REGEX REPLACE "(................................................................)" "\\1\n" hex "${hex}")
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," hex "${hex}")
file(SIZE ${IN} size)
file(WRITE ${OUT} "#include \"${HEADER}\"\nnamespace ${NAMESPACE} {\nalignas(16) const unsigned char ${NAME}_bytes[] = {\n${hex}};\nconst std::size_t ${NAME}_size = ${size};\n}\n")
