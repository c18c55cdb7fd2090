using System.Globalization;
using System.Text;
using Headroom.JobFiles.Sheets;

namespace Headroom.JobFiles.Tests.Sheets;

/// <summary>Drops written as a sheet in any dialect and read again are the same drops.</summary>
public sealed class SheetPropertyTests
{
    private sealed record Row(string Id, string To, double? Length, string Unit, string? Cable, int? Bundle);

    private sealed record Dialect(char Separator, char Decimal, string End, string Encoding, bool Quotes, string UnitIn);

    // Without those that a spreadsheet program makes of two numbers, such as dec-87.
    private static readonly Gen<string> Names = Gen.Select(Gen.String[Gen.Char["abcdefgöüéñßKX"], 1, 8], Gen.Int[0, 999], (letters, number) => $"{letters}-{number}")
        .Where(name => Mangled.Find(name, CellKind.Name) is null);

    // Three digits behind a sign may be a group of thousands; so lengths here have one or two.
    private static readonly Gen<Row> Rows = Gen.Select(Names, Names, Gen.Int[10, 19_999].Select(tenths => tenths / 10.0).Nullable(), Gen.OneOf("m", "ft"), Names.Null(), Gen.Int[1, 99].Nullable())
        .Select((id, to, length, unit, cable, bundle) => new Row(id, to, length, unit, cable, bundle));

    private static readonly Gen<Dialect> Dialects = Gen.Select(
        Gen.OneOf(';', ',', '\t'), Gen.OneOf(',', '.'), Gen.OneOf("\n", "\r\n", "\r"), Gen.OneOf("utf-8", "utf-8 with mark", "utf-16", "utf-16 big", "windows-1252"), Gen.Bool, Gen.OneOf("cell", "column"))
        .Select((separator, sign, end, encoding, quotes, unit) => new Dialect(separator, sign, end, encoding, quotes || separator == sign, unit));

    [Fact]
    public void Drops_written_in_any_dialect_are_read_as_they_were() => Gen.Select(Rows.Array[1, 12], Dialects).Sample(
        (rows, dialect) =>
        {
            var different = rows.DistinctBy(row => row.Id).ToArray();
            // The sign is said: a sheet of whole numbers does not tell it, and a comma may stand between thousands.
            var plan = SheetDesk.Plan("drops") with { Decimals = dialect.Decimal == ',' ? "comma" : "point", Separator = SheetSeparator.Word(dialect.Separator) };
            var read = SheetDesk.Drops(SheetDesk.Read(plan, Bytes(different, dialect)));
            Assert.Equal(different.Select(Told), read.Select(drop => new Row(drop.Id, drop.To!, Rounded(drop.Pieces[0].Length?.Value.Value), "m", drop.Pieces[0].Cable, drop.Pieces[0].Bundle?.Value.Value)));
        },
        iter: Long.Samples(10_000));

    private static Row Told(Row row) => row with { Length = Rounded(row.Unit == "ft" ? row.Length * 0.3048 : row.Length), Unit = "m" };

    private static double? Rounded(double? metres) => metres is { } value ? Math.Round(value, 6) : null;

    private static byte[] Bytes(Row[] rows, Dialect dialect)
    {
        List<string[]> lines = [dialect.UnitIn == "column" ? ["drop", "room", "length", "unit", "cable", "bundle"] : ["drop", "room", "length", "cable", "bundle"]];
        lines.AddRange(rows.Select(row => Cells(row, dialect)));
        var text = string.Concat(lines.Select(line => string.Join(dialect.Separator, line.Select(cell => dialect.Quotes ? $"\"{cell}\"" : cell)) + dialect.End));
        return dialect.Encoding switch
        {
            "utf-8 with mark" => [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)],
            "utf-16" => [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(text)],
            "utf-16 big" => [.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes(text)],
            "windows-1252" => Encoding.Latin1.GetBytes(text),
            _ => Encoding.UTF8.GetBytes(text),
        };
    }

    private static string[] Cells(Row row, Dialect dialect)
    {
        var length = row.Length?.ToString("0.0#", CultureInfo.InvariantCulture).Replace('.', dialect.Decimal) ?? "";
        var bundle = row.Bundle?.ToString(CultureInfo.InvariantCulture) ?? "";
        return dialect.UnitIn == "column"
            ? [row.Id, row.To, length, row.Unit, row.Cable ?? "", bundle]
            : [row.Id, row.To, length.Length > 0 ? $"{length} {row.Unit}" : "", row.Cable ?? "", bundle];
    }
}
