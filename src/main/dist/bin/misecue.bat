@echo off
rem Starts misecue with the Java that JAVA_HOME names, or else the one on the PATH (17 or newer).
rem Written with care but never run yet: no Windows machine was at hand. Reports are welcome.
setlocal
set "HOME_OF_MISECUE=%~dp0.."
set "JAVA_OF_MISECUE=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_OF_MISECUE=%JAVA_HOME%\bin\java.exe"
"%JAVA_OF_MISECUE%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Xlog:disable --enable-native-access=ALL-UNNAMED %MISECUE_OPTS% -cp "%HOME_OF_MISECUE%\lib\misecue.jar" org.misecue.cli.Misecue %*
exit /b %ERRORLEVEL%
