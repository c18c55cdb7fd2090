using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Text;
using System.Text.RegularExpressions;

namespace Headroom.Bench;

/// <summary>Measures how soon the desk can be used, and how long a page takes when many use it: clients and server on one machine.</summary>
internal static partial class ServeBench
{
    private const int Jobs = 300;
    private const int Endpoints = 100;
    private const int People = 50;
    private const int Moves = 100;
    private static readonly TimeSpan Pause = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan While = TimeSpan.FromMinutes(2);

    /// <summary>Adds the table and the bars.</summary>
    public static void Measure(StringBuilder text, List<(string, double, double, string)> bars, Func<string[], ProcessStartInfo> headroom)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-bench-desk").FullName;
        try
        {
            Fill(folder, headroom);
            var ready = Enumerable.Range(0, 5).Select(_ => Ready(folder, headroom)).Order().ElementAt(2);
            var move = Move(headroom);
            var (pages, megabytes) = Load(folder, headroom);
            var p95 = pages[(int)(pages.Count * 0.95)];
            text.Append(CultureInfo.InvariantCulture, $"""
                ## The desk, {Jobs} jobs of {Endpoints} endpoints in its store

                | what | figure |
                | --- | ---: |
                | from start to the first page answered, median of 5 | {ready:0} ms |
                | {pages.Count} ledger pages asked for by {People} people, each one in {Pause.TotalSeconds:0} s: median | {pages[pages.Count / 2]:0} ms |
                | 95 of 100 within | {p95:0} ms |
                | a listener of examples/barn-vets moved on its plan, until drawing and entries are back: median of {Moves} | {move[move.Count / 2]:0} ms |
                | 95 of 100 within | {move[(int)(move.Count * 0.95)]:0} ms |
                | memory of the process at the end | {megabytes:0} MB |


                """);
            bars.Add(("the desk answers after its start within", ready, 2000, "ms"));
            bars.Add(("a move on a plan is worked out and drawn within", move[move.Count / 2], 100, "ms"));
            bars.Add(($"ledger page for {People} people on {Jobs} jobs, 95 of 100", p95, 150, "ms"));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // One person who drags: one place after the other, as quickly as the last is answered.
    private static List<double> Move(Func<string[], ProcessStartInfo> headroom)
    {
        var folder = Directory.CreateTempSubdirectory("headroom-bench-move").FullName;
        try
        {
            Import(headroom, folder, [Path.Combine(FiguresPage.Root, "examples", "barn-vets", "job.yaml")]);
            using var desk = new Served(folder, headroom);
            using var client = new HttpClient();
            var address = $"{desk.Address}jobs/{JobLink().Match(client.GetStringAsync(desk.Address).GetAwaiter().GetResult()).Groups[1].Value}/drawings/rooms?space=reception";
            var fields = FormField().Matches(client.GetStringAsync(address).GetAwaiter().GetResult()).ToDictionary(match => WebUtility.HtmlDecode(match.Groups[1].Value), match => WebUtility.HtmlDecode(match.Groups[2].Value));
            fields["do"] = "look";
            fields["part"] = "yes";
            var times = new List<double>();
            for (var move = -Moves; move < Moves; move++)
            {
                fields["listeners/desk/at|0"] = (3 + move * 0.02).ToString("0.##", CultureInfo.InvariantCulture);
                var asked = Stopwatch.StartNew();
                using var answer = client.PostAsync(address, new FormUrlEncodedContent(fields)).GetAwaiter().GetResult();
                answer.EnsureSuccessStatusCode().Content.ReadAsStringAsync().GetAwaiter().GetResult();
                // The first are for the program to get warm by.
                if (move >= 0)
                    times.Add(asked.Elapsed.TotalMilliseconds);
            }

            return [.. times.Order()];
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Import(Func<string[], ProcessStartInfo> headroom, string folder, IReadOnlyList<string> files)
    {
        using var import = Process.Start(headroom(["store", "import", .. files, "--data", folder]))!;
        import.StandardOutput.ReadToEnd();
        import.WaitForExit();
        if (import.ExitCode != 0)
            throw new InvalidOperationException("The jobs were not taken into the store.");
    }

    private static void Fill(string folder, Func<string[], ProcessStartInfo> headroom)
    {
        var files = Enumerable.Range(0, Jobs).Select(job => Path.Combine(folder, string.Create(CultureInfo.InvariantCulture, $"job-{job:000}.yaml"))).ToList();
        foreach (var (file, job) in files.Select((file, job) => (file, job)))
            File.WriteAllText(file, SyntheticSite.Yaml(Endpoints, job));
        Import(headroom, folder, files);
    }

    private static double Ready(string folder, Func<string[], ProcessStartInfo> headroom)
    {
        var clock = Stopwatch.StartNew();
        using var desk = new Served(folder, headroom);
        using var client = new HttpClient();
        client.GetStringAsync(desk.Address + "new").GetAwaiter().GetResult();
        return clock.Elapsed.TotalMilliseconds;
    }

    private static (List<double> Pages, double Megabytes) Load(string folder, Func<string[], ProcessStartInfo> headroom)
    {
        using var desk = new Served(folder, headroom);
        using var client = new HttpClient { Timeout = TimeSpan.FromMinutes(5) };
        var jobs = JobLink().Matches(client.GetStringAsync(desk.Address).GetAwaiter().GetResult()).Select(match => match.Groups[1].Value).Distinct().ToList();
        var all = Task.WhenAll(Enumerable.Range(0, People).Select(person => Person(client, desk.Address, jobs, person))).GetAwaiter().GetResult();
        desk.Process.Refresh();
        return ([.. all.SelectMany(one => one).Order()], desk.Process.WorkingSet64 / 1e6);
    }

    // People come one after the other, and each asks for another job every time.
    private static async Task<List<double>> Person(HttpClient client, string address, List<string> jobs, int person)
    {
        var times = new List<double>();
        await Task.Delay(Pause * person / People);
        for (var clock = Stopwatch.StartNew(); clock.Elapsed < While;)
        {
            var job = jobs[(person * 37 + times.Count * 101) % jobs.Count];
            var asked = Stopwatch.StartNew();
            await client.GetStringAsync($"{address}jobs/{job}");
            times.Add(asked.Elapsed.TotalMilliseconds);
            if (Pause - asked.Elapsed is { Ticks: > 0 } rest)
                await Task.Delay(rest);
        }

        return times;
    }

    [GeneratedRegex("<input(?=[^>]*name=\"([^\"]+)\")(?=[^>]*value=\"([^\"]*)\")[^>]*>")]
    private static partial Regex FormField();

    [GeneratedRegex("href=\"/jobs/([^\"]+)\"")]
    private static partial Regex JobLink();

    private sealed class Served : IDisposable
    {
        public Served(string folder, Func<string[], ProcessStartInfo> headroom)
        {
            Process = Process.Start(headroom(["serve", "--data", folder, "--urls", "http://127.0.0.1:0"]))!;
            var said = Process.StandardOutput.ReadLine() ?? throw new InvalidOperationException("The desk did not start.");
            Address = said.Split(' ')[4] + "/";
        }

        public Process Process { get; }

        public string Address { get; }

        public void Dispose()
        {
            Process.Kill();
            Process.WaitForExit();
            Process.Dispose();
        }
    }
}
