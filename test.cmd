@echo off
rem Builds everything and runs all tests. "test --long" runs the long proofs in full; what follows goes to dotnet test.
setlocal
pushd "%~dp0"
if "%~1"=="--long" (
    set HEADROOM_LONG=1
    shift
)
call headroom.cmd --version >nul
if not exist artifacts\run\current goto failed
dotnet restore Headroom.slnx -p:RestoreLockedMode=true -v q || goto failed
dotnet build Headroom.slnx -c Release --no-restore -v q --nologo || goto failed
dotnet test --solution Headroom.slnx -c Release --no-build --max-parallel-test-modules 2 --no-progress %1 %2 %3 %4 %5 %6 %7 %8 %9
set "result=%errorlevel%"
popd
exit /b %result%

:failed
popd
exit /b 1
