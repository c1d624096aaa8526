# Writes one source file that holds data/lexicon.csv as text, so that the program needs no data files
# at run time. Called as: cmake -DOUT=file.cpp -DTABLE=lexicon.csv -P embed_lexicon.cmake
file(READ ${TABLE} text)
set(body "// Written by the build from domain/certificate/data/lexicon.csv; change the table there.\n")
string(APPEND body "#include \"domain/certificate/lexicon_data.h\"\n\n")
string(APPEND body "namespace tangmark::certificate {\n\n")
string(APPEND body "const std::string_view lexicon_csv = R\"~~(${text})~~\";\n\n")
string(APPEND body "}  // namespace tangmark::certificate\n")
file(WRITE ${OUT} "${body}")
