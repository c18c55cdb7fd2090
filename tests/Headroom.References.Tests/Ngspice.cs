using System.Diagnostics;
using System.Globalization;
using System.Text;
using Headroom.References.Tests.PowerAndCabling;

namespace Headroom.References.Tests;

/// <summary>A case of section 2 as a circuit for an outside program: every conductor a resistor of its own.</summary>
internal static class Ngspice
{
    internal static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, OperatingSystem.IsWindows() ? "ngspice.exe" : "ngspice")).FirstOrDefault(File.Exists);

    internal static string Circuit(LoadCase load)
    {
        var text = new StringBuilder(FormattableString.Invariant($"* {load.Id}\nV1 out0 back0 {load.SourceVolts:R}\nRground back0 0 1\n"));
        for (var piece = 0; piece < load.Pieces.Count; piece++)
            for (var conductor = 0; conductor < load.Pairs; conductor++)
                foreach (var way in new[] { "out", "back" })
                    text.Append(CultureInfo.InvariantCulture,
                        $"R{way}{piece}_{conductor} {Node(way, piece, conductor, load)} {Node(way, piece + 1, conductor, load)} {Ohms(load.Pieces[piece]):R}\n");
        return text.Append(CultureInfo.InvariantCulture, $"""
            Bload outend backend I={load.LoadWatts:R}/V(outend,backend)
            .nodeset v(outend)={load.SourceVolts:R} v(backend)=0
            .options reltol=1e-9 abstol=1e-12 vntol=1e-9
            .control
            set numdgt=12
            op
            print v(outend)-v(backend)
            quit
            .endc
            .end

            """).ToString();
    }

    internal static async Task<double> LoadVolts(LoadCase load, CancellationToken cancellation)
    {
        var file = Path.Combine(Path.GetTempPath(), $"headroom-{load.Id}-{Environment.ProcessId}.cir");
        await File.WriteAllTextAsync(file, Circuit(load), cancellation);
        try
        {
            using var run = Process.Start(new ProcessStartInfo(Program!, ["-b", file]) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var errors = run.StandardError.ReadToEndAsync(cancellation);
            var answer = await run.StandardOutput.ReadToEndAsync(cancellation);
            await run.WaitForExitAsync(cancellation);
            return Read(answer + await errors);
        }
        finally
        {
            File.Delete(file);
        }
    }

    // The conductors of one way meet at both ends of the cable only.
    private static string Node(string way, int piece, int conductor, LoadCase load) =>
        piece == 0 ? way + "0" : piece == load.Pieces.Count ? way + "end" : FormattableString.Invariant($"{way}{piece}_{conductor}");

    private static double Ohms(CablePiece piece) => piece.OhmsPerMetre * piece.Metres;

    private static double Read(string answer)
    {
        var line = answer.Split('\n').FirstOrDefault(line => line.StartsWith("v(outend)-v(backend) =", StringComparison.Ordinal));
        Assert.True(line is not null, $"ngspice gave no voltage:\n{answer}");
        return double.Parse(line[(line.IndexOf('=', StringComparison.Ordinal) + 1)..], CultureInfo.InvariantCulture);
    }
}
