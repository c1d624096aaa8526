# Writes one source file that holds the readable tables of data/ as text, so that the program needs
# no data files at run time. Called as: cmake -DOUT=file.cpp -DTABLES="a.csv;b.csv" -P embed_data.cmake
set(body "// Written by the build from domain/steel/data; change the tables there.\n")
string(APPEND body "#include \"domain/steel/built_in_data.h\"\n\nnamespace tangmark::steel::built_in {\n\n")
foreach(table ${TABLES})
  get_filename_component(name ${table} NAME_WE)
  file(READ ${table} text)
  string(APPEND body "const std::string_view ${name} = R\"~~(${text})~~\";\n\n")
endforeach()
string(APPEND body "}  // namespace tangmark::steel::built_in\n")
file(WRITE ${OUT} "${body}")
