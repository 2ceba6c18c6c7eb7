<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>setfolio::NewMatchDialog</name>
    <message numerus="yes">
        <source>%n to mend</source>
        <translation>
            <numerusform>%n to mend</numerusform>
            <numerusform>%n to mend</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>setfolio::OfficialsPage</name>
    <message numerus="yes">
        <source>%n named</source>
        <translation>
            <numerusform>%n named</numerusform>
            <numerusform>%n named</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>setfolio::TeamPage</name>
    <message numerus="yes">
        <source>%n players</source>
        <translation>
            <numerusform>%n player</numerusform>
            <numerusform>%n players</numerusform>
        </translation>
    </message>
</context>
</TS>
