@echo off
rem By double click: in a window of the screen's size a round; the first time, the questions that a new home needs.
title HandsFree
mode con: cols=80 lines=25
chcp 65001 >nul
call "%~dp0handsfree.cmd" start
if errorlevel 1 call "%~dp0handsfree.cmd" check
echo.
pause
