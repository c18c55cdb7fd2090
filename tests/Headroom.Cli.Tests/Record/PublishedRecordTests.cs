using System.Globalization;
using System.Text.Json;
using Headroom.Cli.Tests.Commands;

namespace Headroom.Cli.Tests.Record;

/// <summary>Published worked examples, written as a firm's sheets and taken the whole way through the command.</summary>
public sealed class PublishedRecordTests
{
    private static JsonElement Of(RecordFolder folder, params string[] options)
    {
        var result = TestDesk.Run(["record", folder.Path, "--on", "2026-11-25", "--format", "json", .. options]);
        Assert.True(result.ExitCode < 2, result.Err);
        using var json = JsonDocument.Parse(result.Out);
        return json.RootElement.Clone();
    }

    private static double Number(JsonElement item, string key) => item.GetProperty(key).GetDouble();

    // NIST/SEMATECH e-Handbook 8.4.5.1, from memory: 2 failures in 800 h, 90 %.
    [Fact]
    public void The_handbooks_interval_of_a_time_between_failures()
    {
        using var folder = new RecordFolder(("fleet.csv", "site,model,units,hours\na,box,10,800 h\n"), ("failures.csv", "site,model,units\na,box,2\n"));
        var model = Of(folder).GetProperty("models")[0];
        Assert.Equal(400, Number(model, "classicalHours"), 0.5);
        Assert.Equal(127.069, Number(model, "classicalLeastHours"), 0.0005);
        Assert.Equal(2251.229, Number(model, "classicalMostHours"), 0.0005);
    }

    // The example on R's help page of poisson.test prints p-value = 0.07967 and the limits of the ratio.
    [Fact]
    public void The_comparison_on_a_help_page_of_R()
    {
        using var folder = new RecordFolder(
            ("own.yaml", "catalogue: 1\nendpoints:\n  box: {kind: phone, power: none}\n  plain: {kind: phone, power: none}\n"),
            ("fleet.csv", "site,model,units,hours\na,box,20,800 h\na,plain,30,3011 h\n"),
            ("failures.csv", "site,model,units\na,box,11\na,plain,21\n"));
        var pair = Of(folder, "--catalogue", Path.Combine(folder.Path, "own.yaml")).GetProperty("pairs")[0];
        Assert.Equal("box", pair.GetProperty("first").GetString());
        Assert.Equal(0.07967, Number(pair, "chance"), 0.000005);
        Assert.Equal(1.971488, Number(pair, "ratio"), 0.0000005);
        Assert.Equal(0.858426, Number(pair, "leastRatio"), 0.0000005);
        Assert.Equal(4.277266, Number(pair, "mostRatio"), 0.0000005);
        Assert.Equal("not told apart", pair.GetProperty("standing").GetString());
    }

    // One failure in 300 000 h believed, 3 seen in 2 102 400 h; the next 1 051 200 h want 5 spares at 95 % (4 are enough in .938559, 5 in .972816).
    [Fact]
    public void A_belief_from_a_maker_and_the_spares_that_follow()
    {
        using var folder = new RecordFolder(
            ("own.yaml", "catalogue: 1\nswitches:\n  box:\n    like: alder\n    mtbf: 600000 h\n"),
            ("fleet.csv", "site,model,units,hours\na,box,123,2102400 h\n"),
            ("failures.csv", "site,model,units\na,box,3\n"),
            ("shelf.csv", "model,spares,supplier\nbox,5,365 d\n"));
        var record = Of(folder, "--catalogue", Path.Combine(folder.Path, "own.yaml"));
        var model = record.GetProperty("models")[0];
        Assert.Equal(1.458541, 100 * Number(model, "yearRate"), 0.0000005);
        Assert.Equal(0.498208, 100 * Number(model, "leastYearRate"), 0.0000005);
        Assert.Equal(2.827257, 100 * Number(model, "mostYearRate"), 0.0000005);
        var shelf = record.GetProperty("shelf")[0];
        Assert.Equal(5, Number(shelf, "wanted"));
        var steps = shelf.GetProperty("working").GetProperty("steps").EnumerateArray().ToDictionary(step => step.GetProperty("name").GetString()!, step => step.GetProperty("value").GetDouble());
        Assert.Equal(93.8559, steps["4 are enough in"], 0.00005);
        Assert.Equal(97.2816, steps["5 are enough in"], 0.00005);
    }

    // Student's data of two sleeping draughts, 1908, as R's data set 'sleep', from memory: t = -4.0621, df = 9, p-value = 0.002833, mean of the differences -1.58.
    [Fact]
    public void Students_own_paired_differences()
    {
        double[] one = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0];
        double[] other = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];
        var rows = one.Zip(other).Select(pair => string.Create(CultureInfo.InvariantCulture, $"a,temperature,{pair.First} °C,{pair.Second} °C\n"));
        using var folder = new RecordFolder(("readings.csv", "site,what,value,predicted\n" + string.Concat(rows)));
        var check = Of(folder).GetProperty("predictions")[0];
        Assert.Equal(-1.58, Number(check, "bias"), 0.005);
        Assert.Equal(0.002833, Number(check, "biasChance"), 0.0000005);
        Assert.Equal(-4.0621, Number(check, "bias") / (Number(check, "scatter") / Math.Sqrt(10)), 0.00005);
        Assert.True(check.GetProperty("biased").GetBoolean());
    }
}
