@echo off
rem Starts Baywright. Short runs start faster without the slow compiler; only cut gains from it.
set "quick=-XX:TieredStopAtLevel=1"
if "%~1"=="cut" set "quick=-XX:+TieredCompilation"
java %quick% -XX:+UseSerialGC -jar "%~dp0cli\target\baywright.jar" %*
