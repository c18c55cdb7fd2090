using Headroom.Domain.Findings;
using Headroom.JobFiles.Editing;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>People's own headings and names become the job's, and whatever is not understood is asked about.</summary>
public sealed class SheetMappingTests
{
    public static TheoryData<string> Kinds => [.. SheetKinds.All.Select(kind => kind.Name)];

    // The columns that the trade's sheets commonly have (practice of small installers, no source).
    [Theory]
    [InlineData("drops", "drop,room,device,length,unit,cable,panel,panel_port,switch,port,note\nK-01,hall,ap-1,31,m,cat6-23,A,1,sw-1,5,dusty\n", "K-01: {from: cupboard, to: hall, length: 31 m, cable: cat6-23}")]
    [InlineData("patching", "switch,port,description,vlan,poe,device,patch,cord\nsw-1,5,x,20,yes,,01,1 m\nsw-1,6,free,,,,,\n", "\"01\": sw-1/5")]
    [InlineData("patching", "switch,port,device\nsw-1,5,till\n", "till: sw-1/5")]
    [InlineData("readings", "date,place,quantity,value,unit,instrument,condition\n2026-11-14,sw-1/5,Power,6.4,W,plug meter,night\n", "- {what: watts, at: sw-1/5, value: 6.4 W, with: plug meter, on: 2026-11-14, while: night}")]
    [InlineData("prices", "item,supplier,cost,date,list\nalder,Hollow Lane,212.50 EUR,2026-11-20,autumn\n", "- {model: alder, cost: 212.50 EUR, supplier: Hollow Lane, on: 2026-11-20, list: autumn}")]
    [InlineData("endpoints", "name,model,serial,mac,location\ncam-1,sanderling,77,02005e100001,hall\n", "cam-1: {model: sanderling, near: hall, hardware: 02:00:5e:10:00:01}")]
    [InlineData("endpoints", "qty,model,room\n12,pipit,hall\n", "12 x pipit: {near: hall}")]
    public void The_usual_columns_are_understood_without_a_word(string kind, string text, string row)
    {
        var sheet = SheetDesk.Read(kind, text);
        Assert.Equal("", string.Join('\n', sheet.Findings));
        var entry = Assert.Single(sheet.Entries);
        Assert.Equal(row, sheet.Kind.IsList ? "- " + YamlWriter.Flow(entry.Value) : RowsEdit.Entry(entry));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void No_heading_means_two_things_in_one_kind_of_sheet(string kind)
    {
        var words = SheetKinds.Find(kind)!.Fields.SelectMany(field => field.Words.Append(field.Name).Distinct());
        Assert.Empty(words.GroupBy(word => word).Where(group => group.Count() > 1).Select(group => group.Key));
    }

    [Theory, MemberData(nameof(Kinds))]
    public void Headings_are_written_as_they_are_compared(string kind) => Assert.All(
        SheetKinds.Find(kind)!.Fields.SelectMany(field => field.Words), word => Assert.Equal(SheetHeading.PlainOf(word), word));

    [Fact]
    public void A_list_in_the_job_tells_headings_units_and_names()
    {
        var plan = SheetDesk.Plan("drops") with
        {
            Columns = [new("Where it ends", "to"), new("Run", "length (ft)"), new("Tag", "drop"), new("Colour", "none")],
            Names = [new("Great hall", "hall")],
        };
        var sheet = SheetDesk.Read(plan, "Tag,Where it ends,Run,Colour\nK-01,Great hall,100,blue\n");
        Assert.Equal("", string.Join('\n', sheet.Findings));
        Assert.Equal("K-01: {from: cupboard, to: hall, length: 100 ft}", RowsEdit.Entry(Assert.Single(sheet.Entries)));
    }

    [Theory]
    [InlineData("Run", "length (ft)", "the list of columns names 'Run'")]
    [InlineData("Length (m)", "lenght", "the field 'lenght'")]
    public void A_list_that_names_what_is_not_there_is_refused(string heading, string field, string given)
    {
        var sheet = SheetDesk.Read(SheetDesk.Plan("drops") with { Columns = [new(heading, field)] }, "drop,room,Length (m)\nK-01,hall,31\n");
        Assert.Equal(given, SheetDesk.Finding(sheet, "SHT023").Given);
    }

    [Fact]
    public void A_heading_that_is_nearly_a_usual_one_is_asked_about()
    {
        var finding = SheetDesk.Finding(SheetDesk.Read("drops", "drop;room;lenght (m)\nK-01;hall;31\n"), "SHT006");
        Assert.Equal((Severity.Question, "drops.csv:1:11"), (finding.Severity, finding.At.ToString()));
        Assert.Contains("probably it is length", finding.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Length (ft)", "ft")]
    [InlineData("length [m]", "m")]
    [InlineData("Cable_length (m)", "m")]
    [InlineData("Length in ft", "ft")]
    [InlineData("Length ft", "ft")]
    [InlineData("Metres", "m")]
    [InlineData("  LENGTH  ", null)]
    public void A_unit_stands_in_the_heading_in_any_usual_way(string heading, string? unit) =>
        Assert.Equal((true, unit), SheetHeading.Of(heading).Fit(SheetKinds.Drops.Find("length")!));

    [Fact]
    public void Two_columns_for_one_thing_are_refused() =>
        Assert.StartsWith("column C 'to' and column B 'room' are both taken for 'to'", SheetDesk.Finding(SheetDesk.Read("drops", "drop;room;to\nK-01;hall;desk\n"), "SHT007").Given, StringComparison.Ordinal);

    [Fact]
    public void A_column_that_cannot_be_done_without_is_asked_for_with_the_probable_answer()
    {
        var plan = new SheetPlan("drops.csv", "drops", Place.None);
        Assert.Contains("otherwise: {from: cupboard}", SheetDesk.Finding(SheetDesk.Read(plan, "drop;room\nK-01;hall\n"), "SHT008").Advice, StringComparison.Ordinal);
        Assert.Contains("columns: {Tag: drop}", SheetDesk.Finding(SheetDesk.Read("drops", "Tag;room\nK-01;hall\n"), "SHT008").Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Where_a_column_is_missing_the_slips_in_the_cells_are_found_in_the_same_go()
    {
        var sheet = SheetDesk.Read(new SheetPlan("drops.csv", "drops", Place.None), "drop;length (m)\nK-01;31,5\n04. Nov;18,0\nK-02;1E+9\nK-01;9,5\n");
        Assert.Equal(["SHT008", "SHT013", "SHT014", "SHT020"], sheet.Findings.Select(finding => finding.Code).Order());
        Assert.Equal((4, 4, 0), sheet.Rows);
        Assert.Empty(sheet.Entries);
    }

    [Fact]
    public void A_sheet_in_which_no_column_names_the_things_says_so_once()
    {
        var sheet = SheetDesk.Read("drops", "Tag;length (m)\n1;31,5\n2;18,0\n");
        Assert.Equal(["SHT006", "SHT008"], sheet.Findings.Select(finding => finding.Code).Order());
    }

    [Theory]
    [InlineData("K-01..K-24")]
    [InlineData("K-01…K-24")]
    [InlineData("K-01 – K-24")]
    [InlineData("K-01 to K-24")]
    [InlineData("K-01 bis K-24")]
    public void A_range_in_one_row_is_a_drop_each(string range)
    {
        var drops = SheetDesk.Drops(SheetDesk.Read("drops", $"drop;room;length (m)\n{range};hall;31\n"));
        Assert.Equal(24, drops.Count);
        Assert.Equal(("K-01", "K-24"), (drops[0].Id, drops[^1].Id));
    }

    [Fact]
    public void A_drop_whose_zeros_were_lost_is_told_by_the_names_of_the_job()
    {
        var finding = SheetDesk.Finding(SheetDesk.Read("patching", "drop,switch,port\n7,sw-1,3\n"), "SHT015");
        Assert.Contains("probably it is 07", finding.Advice, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("readings", "place,value\nsw-1/1,6.4 W\n", "what: watts")]
    [InlineData("readings", "place,value\ndesk,47.6 dB(A)\n", "what: sound")]
    [InlineData("readings", "place,value\n01,21.7 V\n", "what: volts")]
    public void What_was_measured_is_told_by_its_unit_where_no_column_says_it(string kind, string text, string part) =>
        Assert.Contains(part, YamlWriter.Flow(Assert.Single(SheetDesk.Read(kind, text).Entries).Value), StringComparison.Ordinal);
}
