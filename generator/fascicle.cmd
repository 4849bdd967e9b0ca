@echo off
rem Runs Fascicle, and builds it first where nothing is built or where its sources have changed since.
rem The twin of the script beside it, for Windows. Exit status: the program's own; 3 where Java or Maven
rem is missing or the build fails.
setlocal DisableDelayedExpansion

set "generator=%~dp0"
set "generator=%generator:~0,-1%"
for %%R in ("%generator%\..") do set "root=%%~fR"
set "target=%generator%\target"
set "jar=%target%\fascicle.jar"
set "archive=%target%\fascicle.jsa"
set "log=%target%\fascicle-build.log"

set "java=java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if "%java%"=="java.exe" where /q java.exe || goto :no_java

rem A short-lived program: the quick compiler only, the plainest collector, no word about an archive that does not fit.
set "flags=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Xlog:disable -Xlog:all=error:stderr"
set "flags=%flags% -Dfile.encoding=UTF-8 -Djava.awt.headless=true"

call :ready
if not errorlevel 1 goto :run
"%java%" -version 2>&1 | findstr /r "version..1[7-9] version..[2-9][0-9]" >nul || goto :no_java
if not exist "%target%" md "%target%"

rem An open handle is the lock: Windows lets nobody else open the file for writing, and closes it with its holder.
set "prepared="
for /l %%I in (1,1,600) do if not defined prepared (
  if not %%I==1 ping -n 2 127.0.0.1 >nul
  3>&2 2>nul (
    9>"%target%\fascicle.lock" (
      call :build_and_train 2>&3
    )
  )
)
if "%prepared%"=="yes" goto :run
if "%prepared%"=="failed" exit /b 3
echo fascicle: another launch has been building for ten minutes, or "%target%" cannot be written.>&2
exit /b 3

:run
set "size="
for %%A in ("%archive%") do set "size=%%~zA"
if not defined size set "size=0"
set "share="
if %size% gtr 0 set share=-XX:SharedArchiveFile="%archive%"
"%java%" %flags% %share% "-Dfascicle.called=%~0" -jar "%jar%" %*
exit /b %errorlevel%

rem Errorlevel 1 where the jar is missing or older than its sources, 2 where the archive is missing or older than the jar.
:ready
if not exist "%jar%" exit /b 1
powershell -NoProfile -NonInteractive -Command ^
  "$jar = (Get-Item -LiteralPath $env:jar).LastWriteTimeUtc;" ^
  "$sources = ($env:generator + '\src\main'), ($env:generator + '\pom.xml'), ($env:root + '\pom.xml'), ($env:root + '\themes');" ^
  "foreach ($source in $sources) { if (Test-Path -LiteralPath $source) {" ^
  "  foreach ($file in @(Get-Item -LiteralPath $source) + @(Get-ChildItem -LiteralPath $source -Recurse)) {" ^
  "    if ($file.LastWriteTimeUtc -gt $jar) { exit 1 } } } };" ^
  "if (-not (Test-Path -LiteralPath $env:archive)) { exit 2 };" ^
  "if ((Get-Item -LiteralPath $env:archive).LastWriteTimeUtc -lt $jar) { exit 2 };" ^
  "exit 0"
exit /b %errorlevel%

:build_and_train
set "prepared=yes"
call :ready
set "state=%errorlevel%"
if %state% equ 1 call :build
if "%prepared%"=="failed" exit /b 3
if %state% equ 1 call :train
if %state% equ 2 call :train
exit /b 0

:build
where /q mvn.cmd && goto :with_maven
if exist "%jar%" (
  echo fascicle: Maven was not found: running the program as it was built.>&2
  exit /b 0
)
echo fascicle: the program is not built yet, and Maven, which builds it, was not found. Install Maven.>&2
set "prepared=failed"
exit /b 3
:with_maven
echo fascicle: building the program (once; takes a minute)...>&2
call mvn.cmd -B -q -f "%root%\pom.xml" -pl generator -am -Dmaven.test.skip=true package <nul >"%log%" 2>&1
if not errorlevel 1 (
  rem The packager leaves a jar alone that would not change: mark it as looked after.
  powershell -NoProfile -NonInteractive -Command "(Get-Item -LiteralPath $env:jar).LastWriteTimeUtc = [DateTime]::UtcNow"
  exit /b 0
)
echo fascicle: the build failed; Maven's last words:>&2
powershell -NoProfile -NonInteractive -Command "Get-Content -LiteralPath $env:log -Tail 30" >&2
set "prepared=failed"
exit /b 3

rem Keeps the loaded classes of one small publication. An empty archive says that this was tried in vain.
:train
set "trial=%TEMP%\fascicle-%RANDOM%%RANDOM%"
md "%trial%"
if exist "%archive%" del /f /q "%archive%"
"%java%" %flags% -jar "%jar%" begin "%trial%\notebook" <nul >nul 2>&1 && ^
"%java%" %flags% -XX:ArchiveClassesAtExit="%archive%.new" -jar "%jar%" publish "%trial%\notebook" --to "%trial%\book" <nul >nul 2>&1 && ^
"%java%" %flags% -XX:SharedArchiveFile="%archive%.new" -jar "%jar%" --version <nul >nul 2>&1 && ^
move /y "%archive%.new" "%archive%" >nul 2>&1
if not exist "%archive%" type nul >"%archive%"
rd /s /q "%trial%"
exit /b 0

:no_java
echo fascicle: Java 17 or newer is needed, and none was found. Install a JDK of 17 or newer, or set JAVA_HOME.>&2
exit /b 3
