@echo off
rem Starts Comparand on Windows, with the Java of JAVA_HOME or on the path; Java 17 or later.
rem COMPARAND_JAVA_OPTIONS adds options for Java, such as -Xmx4g for a very large library.
rem No test starts this file: the tests run where sh does.
setlocal
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Djava.awt.headless=true -Dfile.encoding=UTF-8 %COMPARAND_JAVA_OPTIONS% -jar "%~dp0..\lib\comparand.jar" %*
exit /b %ERRORLEVEL%
