namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>What a spreadsheet program or a tired hand made of a sheet is found and said, all of it in one go. The sheets are invented.</summary>
public sealed class MangledSheetTests
{
    private const string Drops = """
        Outlet;Room;Length (m);Cable;Bundel;Colour
        K-01;hall;31,5;cat6-23;12;blue
        K-02;hall;1.500;cat6-23;12;
        K-03;hall;12.5;cat6-23;12;
        01. Mrz;hall;14,0;cat6-23;12;
        K-05;hall;#REF!;cat6-23;12;
        K-06;hall;########;cat6-23;12;
        K-07;=B2;14,0;cat6-23;12;
        1,2E+45;hall;14,0;cat6-23;12;
        K-08;hall;;cat6-23;12;
        K-09;hall;3,2E+01;cat6-23;12;
        K-01;hall;33,5;cat6-23;12;blue
        K-10;hall;18,0;cat6-23;12;
        K-10;hall;18,0;cat6-23;12;
        ;hall;18,0;cat6-23;12;
        K-11;hall;14;5;cat6-23;12;
        K-11;hall;14;5;cat6-23;12;;left over
        """;

    private const string Endpoints = """
        device;model;drop;mac;watts;qty
        ap-1;bulrush;7;02005e100001;6.4;
        ap-2;bulrush;08;3.45E+11;6.4;
        ap-3;bulrush;03/01/2026;2005100003;;
        ap-4;bulrush;04;02:00:5e:10:00;7.1;
        """;

    private const string Patching = """
        drop,switch,port
        01,sw-1,3
        02,sw-1,03-Jan
        03,sw-1,2026-03-01
        04,sw-1,
        ,sw-1,9
        """;

    private const string Readings = """
        date;place;quantity;value;unit;instrument
        03.04.2026;sw-1/1;power;6,4;W;meter
        46340;sw-1/2;power;6,4;W;meter
        3/4/26;sw-1/3;power;6,4;W;meter
        2026-04-03;sw-1/4;power;6,4;;meter
        """;

    private const string Prices = """
        item,cost,supplier,date
        alder,"1,250",Hollow Lane,2026-11-20
        wren-b,$ 259.00,Hollow Lane,2026-11-20
        pipit,41.50 EUR,Hollow Lane,2026-11-20
        """;

    [Fact]
    public void Everything_that_is_wrong_with_sheets_comes_in_one_go()
    {
        using var folder = new SheetFolder(("drops", Drops), ("endpoints", Endpoints), ("patching", Patching), ("readings", Readings), ("prices", Prices));
        Golden.Agrees("mangled-sheets.txt", folder.Findings());
    }

    [Theory]
    [InlineData("12/3", false)]
    [InlineData("1-3", false)]
    [InlineData("K-01", false)]
    [InlineData("MAR-01", false)]
    [InlineData("2E1", false)]
    [InlineData("3 octagons", false)]
    [InlineData("Mar-01", true)]
    [InlineData("1-Mar", true)]
    [InlineData("01. Mrz", true)]
    [InlineData("3 Jan 2026", true)]
    [InlineData("03/01/2026", true)]
    [InlineData("2026-01-03", true)]
    [InlineData("2026-01-03 00:00:00", true)]
    [InlineData("1.2E+46", true)]
    [InlineData("#N/A", true)]
    [InlineData("####", true)]
    [InlineData("=A1", true)]
    [InlineData("@here", true)]
    public void A_name_that_was_made_something_else_is_told_from_one_that_was_not(string text, bool isMangled)
    {
        var sheet = SheetDesk.Read("drops", $"drop;room\n{text};hall\n");
        Assert.Equal(isMangled, sheet.Stands);
        Assert.Equal(isMangled ? 0 : 1, sheet.Entries.Count);
    }

    [Fact]
    public void A_finding_names_the_cell_as_a_spreadsheet_program_does_and_the_place_in_the_file()
    {
        var finding = SheetDesk.Finding(SheetDesk.Read("patching", "drop,switch,port\n01,sw-1,5\n\"02\",sw-1,03-Jan\n"), "SHT013");
        Assert.Equal("patching.csv:3:11", finding.At.ToString());
        Assert.StartsWith("C3 '03-Jan' in column C 'port'", finding.Given, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_is_taken_over_of_a_row_with_a_slip_and_all_of_the_others()
    {
        var sheet = SheetDesk.Read("drops", "drop;room;length (m)\nK-01;hall;#REF!\nK-02;hall;14\n");
        Assert.Equal(["K-02"], sheet.Entries.Select(entry => entry.Key.Text));
        Assert.Equal((2, 1, 0), sheet.Rows);
    }

    [Theory]
    [InlineData("endpoints", "device;model;peak (W)\na;bulrush;41\nb;bulrush;\n", "peak is not known in row 3: at least 41 W, 1 of 2 unknown")]
    [InlineData("endpoints", "qty;model;peak (W)\n12;pipit;2.5\n2;bulrush;?\n", "peak is not known in row 3: at least 30 W, 2 of 14 unknown")]
    [InlineData("drops", "drop;room;length (ft)\nK-01..K-03;hall;100\nK-04;hall;\nK-05;hall;tbd\n", "length is not known in rows 3, 4: at least 91.44 m, 2 of 5 unknown")]
    public void What_is_missing_is_asked_for_with_the_sum_of_what_is_known(string kind, string text, string given) =>
        Assert.Equal(given, SheetDesk.Finding(SheetDesk.Read(kind, text), "SHT019").Given);
}
