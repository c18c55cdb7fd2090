using System.Text;
using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>However a sheet is written, it says the same.</summary>
public sealed class SheetDialectTests
{
    private const string Semicolons = "Outlet;Room;Length (m);Cable\nK-01;hall;31,5;cat6-23\nK-02;hall;1.234,5;cat6-23\n";

    private static readonly Encoding Western = Encoding.Latin1;

    public static TheoryData<string, string> Same => new()
    {
        { "semicolons and decimal commas", Semicolons },
        { "commas and decimal points", "Outlet,Room,Length (m),Cable\nK-01,hall,31.5,cat6-23\nK-02,hall,\"1,234.5\",cat6-23\n" },
        { "commas and decimal commas in quotation marks", "Outlet,Room,Length (m),Cable\nK-01,hall,\"31,5\",cat6-23\nK-02,hall,\"1234,5\",cat6-23\n" },
        { "tabs", Semicolons.Replace(';', '\t') },
        { "Windows line ends", Semicolons.Replace("\n", "\r\n", StringComparison.Ordinal) },
        { "old line ends", Semicolons.Replace('\n', '\r') },
        { "a first line that says the separator", "sep=;\r\n" + Semicolons },
        { "a byte order mark", "\uFEFF" + Semicolons },
        { "quotation marks around all", "\"Outlet\";\"Room\";\"Length (m)\";\"Cable\"\n\"K-01\";\"hall\";\"31,5\";\"cat6-23\"\n\"K-02\";\"hall\";\"1234,5\";\"cat6-23\"\n" },
        { "spaces, empty lines and empty columns", "\n Outlet ; Room;Length (m);Cable;;\n;;;;;\nK-01;hall ; 31,5;cat6-23;;\n\nK-02;hall;1234,5;cat6-23;;\n\n" },
        { "no end of the last line", Semicolons.TrimEnd() },
        { "a unit in every cell", "Outlet;Room;Length;Cable\nK-01;hall;31,5 m;cat6-23\nK-02;hall;1234,5m;cat6-23\n" },
        { "a column of units", "Outlet;Room;Length;Unit;Cable\nK-01;hall;31,5;m;cat6-23\nK-02;hall;123450;cm;cat6-23\n" },
        { "German headings", "Dose;Raum;Länge [m];Kabel\nK-01;hall;31,5;cat6-23\nK-02;hall;1234,5;cat6-23\n" },
    };

    [Theory, MemberData(nameof(Same))]
    public void One_sheet_in_any_dialect_is_one_list_of_drops(string dialect, string text)
    {
        var drops = SheetDesk.Drops(SheetDesk.Read("drops", text));
        Assert.Equal([("K-01", 31.5), ("K-02", 1234.5)], drops.Select(drop => (drop.Id, drop.Pieces[0].Length!.Value.Value)).ToList());
        Assert.True(drops.All(drop => drop is { To: "hall", From: "cupboard" } && drop.Pieces[0].Cable == "cat6-23"), dialect);
    }

    [Fact]
    public void Feet_and_metres_stand_in_one_list()
    {
        var drops = SheetDesk.Drops(SheetDesk.Read("drops", "drop;room;length (ft);cable\nK-01;hall;100;c\nK-02;hall;30 m;c\nK-03;hall;100';c\nK-04;hall;100 Fuß;c\n"));
        Assert.Equal([30.48, 30, 30.48, 30.48], drops.Select(drop => Math.Round(drop.Pieces[0].Length!.Value.Value, 9)));
    }

    [Fact]
    public void Encodings_are_seen_and_shown()
    {
        const string Text = "Dose;Raum;Länge (m)\nK-01;Büro;31,5\n";
        Assert.Equal("utf-8", Fact(Encoding.UTF8.GetBytes(Text)));
        Assert.Equal("utf-8, with a byte order mark", Fact([.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(Text)]));
        Assert.Equal("utf-16, with a byte order mark", Fact([.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Text)]));
        Assert.Equal("utf-16, with a byte order mark", Fact([.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes(Text)]));
        Assert.Equal("windows-1252, lines end as on Windows", Fact(Western.GetBytes(Text.ReplaceLineEndings("\r\n"))));

        string Fact(byte[] bytes)
        {
            var sheet = SheetDesk.Read(SheetDesk.Plan("drops"), bytes);
            Assert.Equal("Büro", Assert.Single(SheetDesk.Drops(sheet)).To);
            return sheet.Facts[0].Value;
        }
    }

    [Fact]
    public void An_older_encoding_is_asked_about_unless_it_was_said()
    {
        var bytes = Western.GetBytes("Dose;Raum\nK-01;Büro\n");
        var finding = SheetDesk.Finding(SheetDesk.Read(SheetDesk.Plan("drops"), bytes), "SHT004");
        Assert.Equal((Severity.Question, "drops.csv:2:7"), (finding.Severity, finding.At.ToString()));
        Assert.Empty(SheetDesk.Read(SheetDesk.Plan("drops") with { Encoding = "windows-1252" }, bytes).Findings);
    }

    // Windows code page 1252 as published by the Unicode Consortium (CP1252.TXT), from memory: 0x80 is the euro sign, 0x96 an en dash.
    [Fact]
    public void The_euro_sign_of_an_older_encoding_is_a_euro_sign()
    {
        byte[] bytes = [.. "item;cost\nalder;89,50 "u8, 0x80, .. "\n"u8];
        var row = Assert.Single(SheetDesk.Read(SheetDesk.Plan("prices"), bytes).Entries);
        Assert.Equal("{model: alder, cost: 89.50 EUR}", Editing(row));
    }

    [Theory]
    [InlineData("1,500", null, "SHT010")]
    [InlineData("1.500", null, "SHT010")]
    [InlineData("1,500", "comma", "1.500 m")]
    [InlineData("1,500", "point", "1500 m")]
    [InlineData("1.500", "comma", "1500 m")]
    [InlineData("0,500", null, "0.500 m")]
    [InlineData("1234,500", null, "1234.500 m")]
    [InlineData("1.234.567", null, "1234567 m")]
    [InlineData("12,5", "point", "SHT011")]
    [InlineData("12 ± 2,5", null, "12 ± 2.5 m")]
    [InlineData("24..33,5", null, "24..33.5 m")]
    [InlineData("31,5 measured", null, "31.5 m measured")]
    [InlineData("31.5m", null, "31.5 m")]
    public void A_number_is_read_in_the_one_way_it_can_be_or_refused(string cell, string? decimals, string expected)
    {
        var sheet = SheetDesk.Read(SheetDesk.Plan("drops") with { Decimals = decimals }, $"drop;room;length (m)\nK-01;hall;{cell}\n");
        if (expected.StartsWith("SHT", StringComparison.Ordinal))
            SheetDesk.Finding(sheet, expected);
        else
            Assert.EndsWith($"length: {expected}}}", Editing(Assert.Single(sheet.Entries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("14.11.2026", null, "2026-11-14")]
    [InlineData("14/11/2026", null, "2026-11-14")]
    [InlineData("11/14/2026", null, "2026-11-14")]
    [InlineData("2026-11-14", null, "2026-11-14")]
    [InlineData("2026-11-14 09:30", null, "2026-11-14")]
    [InlineData("14 Nov 2026", null, "2026-11-14")]
    [InlineData("03/04/2026", null, "SHT012")]
    [InlineData("03/04/2026", "day-month-year", "2026-04-03")]
    [InlineData("03/04/2026", "month-day-year", "2026-03-04")]
    [InlineData("3/4/26", "day-month-year", "SHT012")]
    [InlineData("46340", null, "SHT026")]
    public void A_day_is_read_in_the_one_way_it_can_be_or_refused(string cell, string? days, string expected)
    {
        var sheet = SheetDesk.Read(SheetDesk.Plan("readings") with { Days = days }, $"date;place;quantity;value\n{cell};sw-1/1;watts;6.4 W\n");
        if (expected.StartsWith("SHT", StringComparison.Ordinal))
            SheetDesk.Finding(sheet, expected);
        else
            Assert.EndsWith($", on: {expected}}}", Editing(Assert.Single(sheet.Entries)), StringComparison.Ordinal);
    }

    // 1899-12-30 and 46340 days: 2026-11-14. By hand: 1900-01-01 is 2, 2026-01-01 is 46023 (126 years of 365 days, 31 leap days, and 2), 317 days on.
    [Fact]
    public void A_count_of_days_is_told_as_the_day_it_probably_is() =>
        Assert.Contains("2026-11-14", SheetDesk.Finding(SheetDesk.Read("readings", "date;place;value\n46340;sw-1/1;6.4 W\n"), "SHT026").Advice, StringComparison.Ordinal);

    [Fact]
    public void Two_separators_that_would_both_do_are_asked_about_until_one_is_said()
    {
        const string Text = "drop,room;by\nK-01,hall;loft\n";
        Assert.Contains("--separator", SheetDesk.Finding(SheetDesk.Read("drops", Text), "SHT003").Advice, StringComparison.Ordinal);
        Assert.DoesNotContain(SheetDesk.Read(SheetDesk.Plan("drops") with { Separator = "comma" }, Text).Findings, finding => finding.Code == "SHT003");
    }

    private static string Editing(Headroom.JobFiles.Yaml.YamlEntry row) => Headroom.JobFiles.Editing.YamlWriter.Flow(row.Value);
}
