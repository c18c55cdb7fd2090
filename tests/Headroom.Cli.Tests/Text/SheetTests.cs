using Headroom.Cli.Tests.Sample;
using Headroom.Cli.Text;
using Headroom.Domain.Ledgers;

namespace Headroom.Cli.Tests.Text;

public sealed class SheetTests
{
    private static readonly Pen Drawn = new(Unicode: true, Colour: false);
    private static readonly Pen Typed = new(Unicode: false, Colour: false);

    public static TheoryData<string, bool, bool> Names => new(
        from name in new[]
        {
            "K", "a name with many short words that goes on and on until no column of any table can hold it any longer",
            "Donaudampfschifffahrtselektrizitätenhauptbetriebswerkbauunterbeamtengesellschaft-Nebenstelle", "診療所の二階の配線盤と受付の機器の名前はとても長いので入りきらない",
            "café ± 3 °C · Ω … × ²",
        }
        from unicode in new[] { true, false }
        from imperial in new[] { true, false }
        select (name, unicode, imperial));

    [Fact]
    public void A_full_sheet_reads_as_accepted() => Golden.Agrees("sheet.txt", Write(SampleLedger.Full, Drawn));

    [Fact]
    public void In_ascii_it_says_the_same() => Golden.Agrees("sheet-ascii.txt", Write(SampleLedger.Full, Typed));

    [Fact]
    public void In_feet_and_pounds_it_says_the_same() => Golden.Agrees("sheet-imperial.txt", Write(SampleLedger.Full, Drawn, imperial: true));

    [Fact]
    public void With_all_every_clear_entry_is_listed()
    {
        var sheet = Write(SampleLedger.Full, Drawn, all: true);
        Assert.All(SampleLedger.Full.Entries, entry => Assert.Contains(entry.Subject, sheet, StringComparison.Ordinal));
        Assert.DoesNotContain("more clear", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void A_ledger_without_entries_says_so() => Assert.Equal(
        "Fern Lane Veterinary Practice · design as-quoted · 25 Nov 2026\n\n"
        + "No limit was found in what was asked for, so there is nothing to say.\n\n"
        + "0 entries: 0 short, 0 tight, 0 clear, 0 unknown\n",
        Write(SampleLedger.Empty, Drawn));

    [Fact]
    public void When_nothing_is_short_the_paragraph_tells_what_is_tight()
    {
        var tight = SampleLedger.Of([.. SampleLedger.Full.Entries.Where(entry => entry.Verdict == Verdict.Tight)], [], [], []);
        Assert.Contains("\nNothing is short. Tight: something is the matter.\n", Write(tight, Drawn), StringComparison.Ordinal);
    }

    [Fact]
    public void More_than_three_short_ones_are_counted()
    {
        var entry = SampleLedger.Full.Entries[0];
        var five = SampleLedger.Of([.. "abcde".Select(letter => entry with { Subject = $"sw-{letter}", Story = new Told($"{letter} is short", entry.Story.Work(entry)) })], [], [], []);
        Assert.Contains("Short: a is short. B is short. C is short. And 2 more are short. A port limit", Write(five, Drawn), StringComparison.Ordinal);
    }

    [Fact]
    public void Colour_is_only_on_marks_and_what_is_left()
    {
        var coloured = Write(SampleLedger.Full, new Pen(Unicode: true, Colour: true));
        Assert.Contains("\u001b[38;5;166m✕\u001b[0m", coloured, StringComparison.Ordinal);
        Assert.Contains("\u001b[38;5;166m-41.4 W\u001b[0m\n", coloured, StringComparison.Ordinal);
        Assert.Equal(Write(SampleLedger.Full, Drawn), Plain(coloured));
    }

    [Theory, MemberData(nameof(Names))]
    public void No_line_is_wider_than_the_page(string name, bool unicode, bool imperial)
    {
        var ledger = Named(name);
        var sheet = Write(ledger, new Pen(unicode, Colour: false), imperial, all: true);
        var explained = Explanation.Write(ledger, new ExplainRequest("job.yaml", new ShownUnits(imperial)), new Pen(unicode, Colour: false));
        Assert.All((sheet + explained).Split('\n'), line => Assert.True(Columns.Of(line) <= Pen.Columns, line));
    }

    [Fact]
    public void A_control_character_in_a_name_does_not_reach_the_terminal() =>
        Assert.DoesNotContain('\u001b', Write(SampleLedger.Full with { Job = "\u001b[2JFern" }, Drawn));

    private static Ledger Named(string name) => SampleLedger.Full with
    {
        Job = name,
        Entries = [.. SampleLedger.Full.Entries.Select(entry => entry with { Id = $"power/{name}/{entry.Quantity}", Subject = name, What = name, Question = entry.Question is null ? null : name })],
        Figures = [.. SampleLedger.Full.Figures.Select(figure => figure with { Subject = name, What = name })],
    };

    private static string Write(Ledger ledger, Pen pen, bool imperial = false, bool all = false) =>
        Sheet.Write(ledger, new SheetRequest("examples/barn-vets/job.yaml", "", all, new ShownUnits(imperial)), pen);

    private static string Plain(string coloured) => System.Text.RegularExpressions.Regex.Replace(coloured, "\u001b\\[[0-9;]*m", "")
        .Replace(" \n", "\n", StringComparison.Ordinal);
}
