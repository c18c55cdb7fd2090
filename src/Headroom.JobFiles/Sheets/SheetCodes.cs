namespace Headroom.JobFiles.Sheets;

/// <summary>The codes of findings about a sheet: how it is built, and what a spreadsheet program made of it.</summary>
internal static class SheetCodes
{
    public static readonly FindingCode Quote = new("SHT001", "A quotation mark of a sheet is never closed, or stands inside a cell.");
    public static readonly FindingCode TooLarge = new("SHT002", "A sheet has more columns, more rows or a longer cell than anybody keeps.");
    public static readonly FindingCode Separator = new("SHT003", "What stands between the cells of a sheet cannot be told for certain.");
    public static readonly FindingCode Encoding = new("SHT004", "A sheet is not in UTF-8; it was taken to be in an older encoding.");
    public static readonly FindingCode NoHeader = new("SHT005", "A sheet has no line with the words that name its columns, or no row below it.");
    public static readonly FindingCode UnknownColumn = new("SHT006", "A column of a sheet is taken for nothing.");
    public static readonly FindingCode ColumnTwice = new("SHT007", "Two columns of a sheet are taken for the same thing.");
    public static readonly FindingCode NoColumn = new("SHT008", "A column that the rows of a sheet cannot do without is not there.");
    public static readonly FindingCode NoUnit = new("SHT009", "Numbers of a column stand without a unit.");
    public static readonly FindingCode AmbiguousNumber = new("SHT010", "A number may be read in two ways: its mark is a decimal sign, or stands between thousands.");
    public static readonly FindingCode MixedDecimals = new("SHT011", "Numbers of one sheet have different decimal signs.");
    public static readonly FindingCode AmbiguousDay = new("SHT012", "A day may be read in two ways.");
    public static readonly FindingCode BecameDate = new("SHT013", "A port or name that a spreadsheet program turned into a date.");
    public static readonly FindingCode BecameNumber = new("SHT014", "A name, address or number that a spreadsheet program shortened to powers of ten.");
    public static readonly FindingCode LostZero = new("SHT015", "A name or address that a spreadsheet program took for a number, so that zeros in front of it are lost.");
    public static readonly FindingCode Formula = new("SHT016", "A cell begins as a formula does. It is never worked out.");
    public static readonly FindingCode ErrorValue = new("SHT017", "A cell holds the error or the hashes of a spreadsheet program in place of its value.");
    public static readonly FindingCode ExtraCells = new("SHT018", "A row has more cells than there are columns.");
    public static readonly FindingCode MissingCells = new("SHT019", "Cells of a column are empty; what the others come to is said.");
    public static readonly FindingCode RowTwice = new("SHT020", "Two rows of a sheet speak of the same thing.");
    public static readonly FindingCode NoKey = new("SHT021", "A row does not say which thing it is about.");
    public static readonly FindingCode NotBeside = new("SHT022", "A sheet that a job names does not lie beside the job.");
    public static readonly FindingCode Mapping = new("SHT023", "The list of a sheet's columns names one that the sheet, or a field that such a sheet, does not have.");
    public static readonly FindingCode NoDesign = new("SHT024", "Nothing says to which design the patching of a sheet belongs.");
    public static readonly FindingCode InJob = new("SHT025", "A row of a sheet is in the job already, or the job names the sheet.");
    public static readonly FindingCode DayCount = new("SHT026", "A day is a count of days, as a spreadsheet program keeps it.");
    public static readonly FindingCode NoAddress = new("SHT027", "A text that is no hardware address.");
    public static readonly FindingCode NoResult = new("SHT028", "A word of a tester's record or of a reading that is no result and no mode.");
    public static readonly FindingCode NoQuantity = new("SHT029", "A cell of a tester's record or of a reading that holds no value, or one out of range.");
    public static readonly FindingCode NoBook = new("SHT030", "A file that is no workbook that can be read, or has no table that can be taken back.");
    public static readonly FindingCode Elsewhere = new("SHT031", "A thing of an edited table that cannot be changed by itself: it is counted, in pieces, or stands in a sheet that the job names.");
    public static readonly FindingCode RowGone = new("SHT032", "Things of the job have no row in an edited table any more. Nothing is taken out that was not named for it.");
    public static readonly FindingCode CannotBeEmpty = new("SHT033", "A cell of an edited table was emptied that a thing cannot be without.");

    public static readonly FindingCode NotGone = new("SHT034", "A thing that is named to be taken out of the job still has a row in an edited table, or none was read that would have one.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<FindingCode> All { get; } =
    [
        Quote, TooLarge, Separator, Encoding, NoHeader, UnknownColumn, ColumnTwice, NoColumn, NoUnit, AmbiguousNumber,
        MixedDecimals, AmbiguousDay, BecameDate, BecameNumber, LostZero, Formula, ErrorValue, ExtraCells, MissingCells, RowTwice,
        NoKey, NotBeside, Mapping, NoDesign, InJob, DayCount, NoAddress, NoResult, NoQuantity, NoBook,
        Elsewhere, RowGone, CannotBeEmpty, NotGone,
    ];
}
