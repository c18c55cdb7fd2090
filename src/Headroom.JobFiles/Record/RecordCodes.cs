namespace Headroom.JobFiles.Record;

/// <summary>The codes of findings about a firm's record.</summary>
internal static class RecordCodes
{
    public static readonly FindingCode NoFiles = new("REC001", "A folder holds none of the sheets of a firm's record.");
    public static readonly FindingCode OtherFile = new("REC002", "A folder holds a sheet that is none of a firm's record.");
    public static readonly FindingCode NoDay = new("REC003", "A day of a firm's record that does not exist, or is no day.");
    public static readonly FindingCode OutOfRange = new("REC004", "A value of a firm's record out of its range, such as a share over 100 % or hours below 0.");
    public static readonly FindingCode WrongOrder = new("REC005", "Days of a firm's record in an order that cannot be, such as a failure before its unit was put in.");
    public static readonly FindingCode NoBatch = new("REC006", "A failure of units that the fleet does not have.");
    public static readonly FindingCode ManyBatches = new("REC007", "A failure that may belong to several batches of the fleet.");
    public static readonly FindingCode MoreThanUnits = new("REC008", "More failures than there were units, such as failures of a batch of none.");
    public static readonly FindingCode DayAndHours = new("REC009", "A batch of the fleet with neither day nor hours, or with both.");
    public static readonly FindingCode Currencies = new("REC010", "A job of a firm's record with amounts in two currencies.");
    public static readonly FindingCode NoWord = new("REC011", "A cell of a firm's record that is none of its words, or no whole number or amount.");
    public static readonly FindingCode Twice = new("REC012", "Two rows of a firm's record speak of the same thing.");
    public static readonly FindingCode UnknownModel = new("REC013", "A firm's record has a model that is not in the catalogue.");
    public static readonly FindingCode OtherAir = new("REC014", "The air at a failure and that of its batch do not agree on whether the place is hot.");
    public static readonly FindingCode NoAir = new("REC015", "Nobody wrote how warm a batch of the fleet stands, so that it is counted neither hot nor cool.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<FindingCode> All { get; } =
    [
        NoFiles, OtherFile, NoDay, OutOfRange, WrongOrder, NoBatch, ManyBatches, MoreThanUnits, DayAndHours, Currencies, NoWord, Twice, UnknownModel, OtherAir, NoAir,
    ];
}
