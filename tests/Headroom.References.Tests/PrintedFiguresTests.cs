namespace Headroom.References.Tests;

public sealed class PrintedFiguresTests
{
    public static TheoryData<string> Names => [.. PrintedTables.All.SelectMany(table => table.Rows).Select(row => row.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_program_agrees_with_the_printed_figure(string name)
    {
        var (table, printed) = PrintedTables.All.SelectMany(table => table.Rows.Select(row => (table, row))).Single(pair => pair.row.Name == name);
        var figure = table.Work(printed);
        Assert.True(printed.AgreesWith(figure), $"Printed {printed.Expected} {printed.Unit} ± {printed.Tolerance}, worked out {figure.Text}. {printed.Source}");
    }
}
