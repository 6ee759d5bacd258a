<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en_US">
<context>
    <name>kempt::desk::BackupLog</name>
    <message numerus="yes">
        <source>%n days ago</source>
        <translation>
            <numerusform>%n day ago</numerusform>
            <numerusform>%n days ago</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>kempt::desk::SettingsDialog</name>
    <message numerus="yes">
        <source>%n proposed</source>
        <translation>
            <numerusform>%n proposed</numerusform>
            <numerusform>%n proposed</numerusform>
        </translation>
    </message>
</context>
</TS>
