using Headroom.Domain.Findings;

namespace Headroom.JobFiles.Tests.Record;

public sealed class FirmBookTests
{
    [Fact]
    public void A_sheet_that_is_not_there_is_not_known_and_one_without_rows_says_nothing_happened()
    {
        var book = RecordDesk.Read(("fleet.csv", RecordDesk.Fleet("a;alder;2;2023-02-03;;;;")), ("failures.csv", "site;model;failed\n")).Value!;
        Assert.Empty(book.Failures!);
        Assert.Null(book.Jobs);
        Assert.Null(book.Shelf);
        Assert.Null(book.Readings);
    }

    [Fact]
    public void A_failure_knows_its_batch_by_place_or_by_the_day_it_was_there()
    {
        var book = RecordDesk.Failed("a;alder;1;2022-01-01;2023-01-01;;;\na;alder;2;2023-01-02;;;;", "a;alder;2022-06-01;;\na;alder;2024-06-01;;").Value!;
        Assert.Equal([1, 2], book.Failures!.Select(failure => failure.Batch!.Units));
    }

    [Theory]
    [InlineData("a;alder;2024-02-30;;", "REC003", "failures.csv:2:9")]
    [InlineData("a;alder;2023-02-02;;", "REC005", "failures.csv:2:9")]
    [InlineData("a;alder;2026-11-26;;", "REC005", "failures.csv:2:9")]
    [InlineData("a;alder;2024-02-03;2024-02-02;", "REC005", "failures.csv:2:20")]
    [InlineData("a;alder;;;", "SHT021", "failures.csv:2:1")]
    [InlineData("a;alder;2024-02-03;;\na;alder;2024-02-04;;", "REC008", "failures.csv:3:1")]
    [InlineData("a;alder;2024-02-03;;400 °C", "REC004", "failures.csv:2:21")]
    public void A_failure_that_cannot_be_is_refused_where_it_stands(string failure, string code, string place)
    {
        var read = RecordDesk.Failed("a;alder;1;2023-02-03;;;;", failure);
        var finding = Assert.Single(read.Findings, finding => finding.Severity == Severity.Error);
        Assert.Equal(code, finding.Code);
        Assert.EndsWith(place, finding.At.ToString(), StringComparison.Ordinal);
        Assert.Null(read.Value);
    }

    [Fact]
    public void A_unit_in_whose_place_another_stood_can_fail_again() =>
        Assert.True(RecordDesk.Failed("a;alder;1;2023-02-03;;;;", "a;alder;2024-02-03;2024-02-05;\na;alder;2025-02-03;;").Ok);

    [Theory]
    [InlineData("shelf.csv", "model;spares;certainty\nalder;1;101 %\n", "REC004")]
    [InlineData("shelf.csv", "model;spares\nalder;-1\n", "REC004")]
    [InlineData("hours.csv", "job;worked (h)\na;-3\n", "REC004")]
    [InlineData("hours.csv", "job;price\na;-3 EUR\n", "REC004")]
    [InlineData("readings.csv", "site;what;value;predicted\na;watts;5 W;5 °C\n", "SHT029")]
    [InlineData("readings.csv", "site;what;value\na;wats;5 W\n", "REC011")]
    [InlineData("readings.csv", "site;value\na;5 furlongs\n", "REC011")]
    [InlineData("readings.csv", "site;model;what;value;mode\na;pipit;watts;5 W;dusk\n", "SHT028")]
    [InlineData("readings.csv", "site,what,value\na,watts,5,2 W\n", "SHT018")]
    public void What_is_out_of_range_is_refused(string file, string text, string code) =>
        Assert.Contains(RecordDesk.Read((file, text)).Findings, finding => finding.Severity == Severity.Error && finding.Code == code);

    [Fact]
    public void All_findings_of_all_sheets_come_in_one_go()
    {
        var found = RecordDesk.Read(("fleet.csv", RecordDesk.Fleet("a;alder;-1;2023-02-03;;;;")), ("shelf.csv", "model;spares\nalder;many\n"), ("hours.csv", "job;worked (h)\na;-3\n")).Findings;
        Assert.Equal(["fleet.csv", "shelf.csv", "hours.csv"], found.Where(finding => finding.Severity == Severity.Error).Select(finding => Path.GetFileName(finding.At.File)));
    }

    [Fact]
    public void Headings_and_decimal_commas_are_understood_as_in_other_sheets()
    {
        var job = Assert.Single(RecordDesk.Read(("hours.csv", "Auftrag;geschätzt (h);Stunden (h);Angebot;Währung\nDach;12,5;14;1234,50;EUR\n")).Value!.Jobs!);
        Assert.Equal((12.5m, 14m, 1234.50m, "EUR"), (job.Estimated, job.Worked, job.Price, job.Currency));
    }

    [Fact]
    public void A_heading_of_ones_own_is_told_with_its_sheet()
    {
        var read = RecordDesk.Read(plan => plan with { Columns = [new("hours.csv/Toil", "worked (h)")] }, ("hours.csv", "job;Toil\na;3\n"), ("shelf.csv", "model;spares\nalder;1\n"));
        Assert.Equal(3m, Assert.Single(read.Value!.Jobs!).Worked);
    }

    [Fact]
    public void A_value_keeps_its_interval_in_the_unit_of_its_quantity()
    {
        var reading = Assert.Single(RecordDesk.Read(("readings.csv", "site;value;predicted\na;104 ± 9 °F;38 ± 3 °C\n")).Value!.Readings!);
        Assert.Equal(("temperature", 40.0, 5.0, 38.0, 3.0), (reading.What, Math.Round(reading.Value, 9), Math.Round(reading.PlusMinus!.Value, 9), Math.Round(reading.Predicted!.Value, 9), reading.PredictedPlusMinus!.Value));
    }

    [Fact]
    public void Hours_on_battery_are_kept_in_minutes_and_so_is_their_interval()
    {
        var reading = Assert.Single(RecordDesk.Read(("readings.csv", "site;what;value\na;minutes;1.5 ± 0.1 h\n")).Value!.Readings!);
        Assert.Equal(("min", 90.0, 6.0), (reading.Unit, Math.Round(reading.Value, 9), Math.Round(reading.PlusMinus!.Value, 9)));
    }

    [Fact]
    public void The_same_readings_serve_a_study_which_leaves_what_is_no_draw()
    {
        const string Text = "site;model;what;value;predicted;mode;calibrated;at most\na;pipit;watts;2.7 W;2.8 W;;;\na;;temperature;40 °C;;;;\na;pipit;watts;9 W;;;no;\na;pipit;watts;4 W;;;;yes\n";
        using var folder = new Sheets.SheetFolder("");
        folder.Put("readings.csv", Text);
        var read = FirmReadingFile.Read(folder.PathOf("readings.csv"));
        Assert.Empty(read.Findings);
        Assert.Equal(2.7, Assert.Single(read.Value!).Watts);
    }

    [Fact]
    public void The_example_is_sound()
    {
        var read = FirmBookFiles.Read(Path.Combine(Repository.Root, "examples", "firm-record"), new(CatalogueFiles.ReadShipped().Value!, new(2026, 11, 25), 35));
        Assert.Equal("REC015", Assert.Single(read.Findings).Code);
        Assert.True(read.Ok);
    }
}
