@echo off
rem Starts HandsFree with what was typed: handsfree --help
setlocal
set "DOTNET_EnableDiagnostics=0"
set "ORT_DISABLE_TELEMETRY=1"
"%~dp0app\HandsFree.exe" %*
exit /b %errorlevel%
