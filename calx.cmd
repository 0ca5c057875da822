@echo off
rem Runs Calx from a checkout on Windows. Builds the Release program first where a source is newer than the last build;
rem says so in one line on standard error, so that standard output holds nothing but the answer.
setlocal
set "HOME_FOLDER=%~dp0"
set "OUT=%HOME_FOLDER%artifacts\calx"
set "STAMP=%OUT%\current.txt"
set "DOTNET_NOLOGO=1"
set "DOTNET_CLI_TELEMETRY_OPTOUT=1"

where dotnet >nul 2>nul
if errorlevel 1 goto no_sdk

if not exist "%STAMP%" goto build
if not exist "%OUT%\program\Calx.App.dll" goto build
set "CALX_HOME=%HOME_FOLDER%"
powershell -NoProfile -ExecutionPolicy Bypass -Command "$stamp = (Get-Item -LiteralPath (Join-Path $env:CALX_HOME 'artifacts\calx\current.txt')).LastWriteTimeUtc; $newer = 'src','practicals','examples','global.json','Directory.Build.props','Directory.Build.targets','Directory.Packages.props' | ForEach-Object { Join-Path $env:CALX_HOME $_ } | Where-Object { Test-Path -LiteralPath $_ } | ForEach-Object { Get-ChildItem -LiteralPath $_ -Recurse -File } | Where-Object { $_.FullName -notmatch '\\(bin|obj)\\' -and $_.LastWriteTimeUtc -gt $stamp } | Select-Object -First 1; if ($newer) { exit 1 } else { exit 0 }" >nul 2>nul
if errorlevel 1 goto build
goto run

:build
dotnet --version >nul 2>nul
if errorlevel 1 goto no_sdk
echo calx: building, which takes about half a minute the first time ... 1>&2
if not exist "%OUT%" mkdir "%OUT%"
rem The stamp is written before the build, so that a file saved meanwhile counts as newer.
echo built> "%OUT%\current.new"
pushd "%HOME_FOLDER%"
rem Compiled ahead of time where the packages for that can be had, otherwise the plain build. Restoring is locked, as
rem running the program is no time to change the lock files.
dotnet restore src\App --locked-mode -p:RuntimeIdentifier=win-x64 -p:PublishReadyToRun=true --artifacts-path artifacts\build -v q --nologo > "%OUT%\build.log" 2>&1
if errorlevel 1 goto plain
dotnet publish src\App --no-restore -c Release -r win-x64 -p:PublishReadyToRun=true --no-self-contained --artifacts-path artifacts\build -o "%OUT%\program" -v q --nologo >> "%OUT%\build.log" 2>&1
if errorlevel 1 goto failed
goto built

:plain
dotnet publish src\App -c Release -p:RestoreLockedMode=true --no-self-contained --artifacts-path artifacts\build -o "%OUT%\program" -v q --nologo >> "%OUT%\build.log" 2>&1
if errorlevel 1 goto failed

:built
popd
move /y "%OUT%\current.new" "%STAMP%" >nul

:run
dotnet "%OUT%\program\Calx.App.dll" %*
exit /b %errorlevel%

:failed
popd
type "%OUT%\build.log" 1>&2
echo calx: the build failed 1>&2
exit /b 69

:no_sdk
echo calx: install the .NET 10 SDK (https://dotnet.microsoft.com/download), then run this again 1>&2
exit /b 69
