# Install rules and the Debian package: build all, then cpack -G DEB in the build folder.
include(GNUInstallDirs)
set(doc ${CMAKE_INSTALL_DATADIR}/doc/kempt)
set(KEMPT_RELEASE_DATE 2026-11-25) # of PROJECT_VERSION; changed with it
set(share ${CMAKE_SOURCE_DIR}/app/share)
set(made ${CMAKE_BINARY_DIR}/share)

# The number in the book's header is said once, in app/book/dialect.h.
file(STRINGS ${CMAKE_SOURCE_DIR}/app/book/dialect.h id_line REGEX "application_id = 0x")
string(REGEX MATCH "0x[0-9A-Fa-f]+" KEMPT_APPLICATION_ID "${id_line}")
if(NOT KEMPT_APPLICATION_ID)
  message(FATAL_ERROR "app/book/dialect.h no longer says application_id = 0x...: Package.cmake reads it there.")
endif()
configure_file(${share}/kempt-book.xml.in ${made}/kempt-book.xml @ONLY)
configure_file(${share}/kempt.metainfo.xml.in ${made}/local.kempt.desk.metainfo.xml @ONLY)

install(TARGETS kempt kempt-desk RUNTIME)
install(FILES ${share}/kempt-desk.desktop DESTINATION ${CMAKE_INSTALL_DATADIR}/applications)
install(FILES ${made}/local.kempt.desk.metainfo.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/metainfo)
install(FILES ${made}/kempt-book.xml DESTINATION ${CMAKE_INSTALL_DATADIR}/mime/packages)
install(DIRECTORY ${CMAKE_SOURCE_DIR}/sample-images DESTINATION ${CMAKE_INSTALL_DATADIR}/kempt)
install(FILES ${CMAKE_SOURCE_DIR}/README.md DESTINATION ${doc})
install(DIRECTORY ${CMAKE_SOURCE_DIR}/docs DESTINATION ${doc} # of the screens, those that the user guide shows
        PATTERN "*1920x1080*" EXCLUDE PATTERN "*-dark.*" EXCLUDE PATTERN "*-200.*" EXCLUDE)

# Made while everything is built; app/run alone does not need them.
foreach(page kempt kempt-desk)
  configure_file(${share}/man/${page}.1.in ${made}/${page}.1 @ONLY)
  add_custom_command(OUTPUT ${made}/${page}.1.gz DEPENDS ${made}/${page}.1 COMMAND gzip -9nkf ${made}/${page}.1)
  list(APPEND made_files ${made}/${page}.1.gz)
  install(FILES ${made}/${page}.1.gz DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
endforeach()

add_executable(draw_icon ${share}/icons/draw_icon.cpp)
target_link_libraries(draw_icon PRIVATE Qt6::Gui kempt_strict)
set(icons ${CMAKE_INSTALL_DATADIR}/icons/hicolor)
install(FILES ${share}/icons/kempt.svg DESTINATION ${icons}/scalable/apps)
foreach(size 16 22 24 32 48 64 128 256)
  set(png ${made}/kempt-${size}.png)
  add_custom_command(OUTPUT ${png} DEPENDS draw_icon ${share}/icons/kempt.svg
    COMMAND ${CMAKE_COMMAND} -E env QT_QPA_PLATFORM=offscreen QT_LOGGING_RULES=*=false $<TARGET_FILE:draw_icon> ${share}/icons/kempt.svg ${size} ${png})
  list(APPEND made_files ${png})
  install(FILES ${png} DESTINATION ${icons}/${size}x${size}/apps RENAME kempt.png)
endforeach()
add_custom_target(share_files ALL DEPENDS ${made_files})

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME kempt)
set(CPACK_PACKAGE_VENDOR "The Kempt project")
set(CPACK_PACKAGE_CONTACT "The Kempt project <kempt@localhost.localdomain>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "measure whether hair and edges are coming back")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Kempt is the desk tool of a hair stylist who brings damaged hair and thin
edges back over months of visits. Photographs taken with a printed gauge card
become readings in millimetres with 95 % intervals; verdicts between visits
say what is more than noise; a report in PDF goes to the client.")
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION graphics)
set(CPACK_DEBIAN_PACKAGE_PRIORITY optional)
set(CPACK_STRIP_FILES ON)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_INSTALL_DEFAULT_DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE WORLD_READ WORLD_EXECUTE)
# Linked libraries are found by dpkg-shlibdeps; these are opened only while Kempt runs.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libqt6sql6-sqlite, qt6-image-formats-plugins, libqt6svg6, qt6-translations-l10n, fonts-dejavu-core, opencv-data")
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON) # needs dpkg-dev
include(CPack)
