namespace Headroom.JobFiles.Files;

/// <summary>The codes of findings about a file as a whole or about the way it is written, whatever it holds.</summary>
internal static class FileCodes
{
    public static readonly FindingCode Missing = new("FILE001", "There is no file of that name.");
    public static readonly FindingCode Folder = new("FILE002", "The name is that of a folder.");
    public static readonly FindingCode Unreadable = new("FILE003", "The file is there and cannot be read.");
    public static readonly FindingCode TooLarge = new("FILE004", "The file is larger than any job or catalogue.");
    public static readonly FindingCode Empty = new("FILE005", "The file holds nothing.");
    public static readonly FindingCode Binary = new("FILE006", "The file is not text.");
    public static readonly FindingCode OtherEncoding = new("FILE007", "The file is text in an encoding other than UTF-8.");
    public static readonly FindingCode BadUtf8 = new("FILE008", "A byte is no part of any UTF-8 character.");
    public static readonly FindingCode ControlCharacter = new("FILE009", "A control character stands in the text.");
    public static readonly FindingCode Unseen = new("FILE010", "A character that cannot be seen, or that turns the order of what is shown, stands in the text.");
    public static readonly FindingCode Tab = new("FILE011", "A line begins with a tab; only spaces say how deep a line lies.");
    public static readonly FindingCode Anchor = new("FILE012", "An anchor (&) or an alias (*) is used.");
    public static readonly FindingCode Merge = new("FILE013", "A merge key (<<) is used.");
    public static readonly FindingCode Tag = new("FILE014", "A tag (!) is used.");
    public static readonly FindingCode TooDeep = new("FILE015", "Things lie in things deeper than any job or catalogue needs.");
    public static readonly FindingCode TooMany = new("FILE016", "The file holds more values than any job or catalogue.");
    public static readonly FindingCode SecondDocument = new("FILE017", "The file holds a second document.");
    public static readonly FindingCode Syntax = new("FILE018", "The text is not YAML at this place.");
    public static readonly FindingCode KeyIsNoText = new("FILE019", "A key is a list or a map, where keys are text.");
    public static readonly FindingCode More = new("FILE020", "More is wrong than is listed.");
    public static readonly FindingCode Twice = new("FILE021", "A key stands twice in one map.");

    /// <summary>All of them, in order.</summary>
    public static IReadOnlyList<FindingCode> All { get; } =
    [
        Missing, Folder, Unreadable, TooLarge, Empty, Binary, OtherEncoding, BadUtf8, ControlCharacter, Unseen,
        Tab, Anchor, Merge, Tag, TooDeep, TooMany, SecondDocument, Syntax, KeyIsNoText, More, Twice,
    ];
}
