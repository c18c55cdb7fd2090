@echo off
rem Starts headroom. Builds it first when there is no build yet or a source has changed since the last one.
rem artifacts\run\seen holds a copy of the sources as last built; robocopy tells quickly whether anything differs.
setlocal
set "root=%~dp0"
set "run=%root%artifacts\run"

where dotnet >nul 2>nul
if errorlevel 1 (
    echo headroom: the .NET SDK 10 is needed and no 'dotnet' was found. Install it, or put its folder on PATH, and try again. 1>&2
    exit /b 2
)

call :fresh
if not errorlevel 1 goto start
if not exist "%run%" mkdir "%run%"
set tries=0

:lock
rem The open handle is the lock: Windows drops it when its holder ends, however that ends.
set "held="
2>nul (9>"%run%\lock" (set "held=yes" & call :build_if_stale 2>con))
if defined held goto built
set /a tries+=1
if %tries%==1 echo waiting for another start of headroom to finish building ... 1>&2
if %tries%==900 (
    echo headroom: another build has held "%run%\lock" for 15 minutes. 1>&2
    exit /b 2
)
ping -n 2 127.0.0.1 >nul
goto lock

:built
call :fresh
if errorlevel 1 exit /b 2

:start
rem What is asked most often starts sooner without the libraries of the web server, which papers, the store and its pages need.
set "quick=%run%\%build%\headroom.quick.runtimeconfig.json"
if not exist "%quick%" goto plain
for %%c in (check study explain reckon) do if "%~1"=="%%c" goto quick
:plain
dotnet "%run%\%build%\headroom.dll" %*
exit /b %errorlevel%
:quick
dotnet exec --runtimeconfig "%quick%" "%run%\%build%\headroom.dll" %*
exit /b %errorlevel%

:fresh
if not errorlevel 1 goto start
if not exist "%run%" mkdir "%run%"
set tries=0

:lock
rem The open handle is the lock: Windows drops it when its holder ends, however that ends.
set "held="
2>nul (9>"%run%\lock" (set "held=yes" & call :build_if_stale 2>con))
if defined held goto built
set /a tries+=1
if %tries%==1 echo waiting for another start of headroom to finish building ... 1>&2
if %tries%==900 (
    echo headroom: another build has held "%run%\lock" for 15 minutes. 1>&2
    exit /b 2
)
ping -n 2 127.0.0.1 >nul
goto lock

:built
call :fresh
if errorlevel 1 exit /b 2

:start
rem The store and its pages need the libraries of the web server; the other commands start sooner without them.
set "desk=%run%\%build%\headroom.desk.runtimeconfig.json"
if not exist "%desk%" goto plain
if "%~1"=="serve" goto desk
if "%~1"=="store" goto desk
:plain
dotnet "%run%\%build%\headroom.dll" %*
exit /b %errorlevel%
:desk
dotnet exec --runtimeconfig "%desk%" "%run%\%build%\headroom.dll" %*
exit /b %errorlevel%

:fresh
set "build="
if not exist "%run%\current" exit /b 1
set /p build=<"%run%\current"
if not exist "%run%\%build%\headroom.dll" exit /b 1
robocopy "%root%src" "%run%\seen\src" /L /E /NJH /NJS /NFL /NDL >nul
if errorlevel 1 exit /b 1
if exist "%root%catalogue" robocopy "%root%catalogue" "%run%\seen\catalogue" /L /E /NJH /NJS /NFL /NDL >nul
if errorlevel 1 exit /b 1
robocopy "%root%." "%run%\seen\root" Directory.*.props global.json headroom.cmd /L /NJH /NJS /NFL /NDL >nul
if errorlevel 1 exit /b 1
exit /b 0

:build_if_stale
call :fresh
if not errorlevel 1 exit /b 0
echo building headroom once ... 1>&2
rem The copy is taken before the build, so that an edit during the build shows as a difference after it.
robocopy "%root%src" "%run%\seen\src" /MIR /NJH /NJS /NFL /NDL >nul
if exist "%root%catalogue" robocopy "%root%catalogue" "%run%\seen\catalogue" /MIR /NJH /NJS /NFL /NDL >nul
robocopy "%root%." "%run%\seen\root" Directory.*.props global.json headroom.cmd /NJH /NJS /NFL /NDL >nul
if exist "%run%\current" del "%run%\current"
set "build=build-%random%%random%"
set "log=%root%artifacts\headroom-build.log"
call :publish -p:ForThisMachine=true
if errorlevel 1 call :publish
if errorlevel 1 (
    type "%log%" 1>&2
    echo headroom: the build failed; the whole log is "%log%" 1>&2
    exit /b 2
)
>"%run%\current" echo %build%
exit /b 0

:publish
pushd "%root%"
dotnet publish src/Headroom.Cli -c Release --artifacts-path "%run%\work" -o "%run%\%build%" -v q --nologo -nodeReuse:false -p:UseSharedCompilation=false -p:RunAnalyzers=false -p:TreatWarningsAsErrors=false -p:RestoreLockedMode=true %* >"%log%" 2>&1 <nul
set "result=%errorlevel%"
popd
exit /b %result%
