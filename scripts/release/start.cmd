@echo off
rem By double click: a round in a window of the screen's size; where a round can't begin yet, what is missing and what to do next.
title HandsFree
mode con: cols=80 lines=25
chcp 65001 >nul
call "%~dp0handsfree.cmd" round
if errorlevel 1 call "%~dp0handsfree.cmd" check
echo.
pause
