@echo off
rem HandsFree's launcher for Windows.
rem   handsfree demo [...]   sets up what is missing, builds, runs the demo
rem   handsfree test [...]   sets up what the tests need, builds, runs every test; last line: N passed, N failed, N skipped
rem   handsfree WORD ...     builds when the sources changed and hands everything to the program (--help lists its commands)
rem
rem Environment: HANDSFREE_TOOLS   where set-up keeps what it fetched (default: .handsfree beside this file)
rem              HANDSFREE_MODELS  a folder that already has models; nothing that lies there is fetched
setlocal
set "HANDSFREE_ROOT=%~dp0"
if not defined HANDSFREE_TOOLS set "HANDSFREE_TOOLS=%HANDSFREE_ROOT%.handsfree"
if not defined HANDSFREE_MODELS set "HANDSFREE_MODELS=%HANDSFREE_TOOLS%\models"
set "DOTNET_EnableDiagnostics=0"
set "DOTNET_CLI_TELEMETRY_OPTOUT=1"
set "DOTNET_NOLOGO=1"
set "ORT_DISABLE_TELEMETRY=1"
set "DOTNET_CLI_UI_LANGUAGE=en"
set "MSBUILDDISABLENODEREUSE=1"

where dotnet >nul 2>nul
if errorlevel 1 (
    echo handsfree: the .NET SDK 10 is missing ^(no 'dotnet' on PATH^); install it and run this again. 1>&2
    exit /b 2
)

set "SHELL_EXE=powershell"
where pwsh >nul 2>nul
if not errorlevel 1 set "SHELL_EXE=pwsh"
set "SCRIPT=%SHELL_EXE% -NoProfile -ExecutionPolicy Bypass -File"

if /i "%~1"=="test" goto test
if /i "%~1"=="demo" goto demo
goto program

:test
%SCRIPT% "%HANDSFREE_ROOT%scripts\setup.ps1"
if errorlevel 1 exit /b 2
%SCRIPT% "%HANDSFREE_ROOT%scripts\test.ps1" %*
exit /b %errorlevel%

:demo
%SCRIPT% "%HANDSFREE_ROOT%scripts\setup.ps1"
if errorlevel 1 exit /b 2

:program
%SCRIPT% "%HANDSFREE_ROOT%scripts\build.ps1"
if errorlevel 1 exit /b 2
dotnet exec "%HANDSFREE_ROOT%src\HandsFree.App\bin\Release\net10.0\HandsFree.dll" %*
exit /b %errorlevel%
