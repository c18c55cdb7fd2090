using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;

namespace Headroom.JobFiles.Yaml;

/// <summary>Says in our words what the parser found wrong.</summary>
internal static class SyntaxWords
{
    private const string Quotes = "put quotes around the value when all of it is one text";

    // What the parser says (a piece of its message), and what we say: given, allowed, advice.
    private static readonly (string Theirs, string Given, string Allowed, string Advice)[] Table =
    [
        ("found invalid mapping", "a second ': ' in one value, or a line deeper than the key above it has room for", "one value behind a key", Quotes + ", else begin the line at the depth of its neighbours"),
        ("scanning a quoted scalar, found unexpected end", "a quote that is never closed", "a quote at both ends", "close it where the text ends"),
        ("unknown escape", "a backslash that means nothing in double quotes", "\\\\ for a backslash, \\\" for a quote", "use single quotes, in which a backslash is a backslash"),
        ("hexadecimal", "a backslash code that is not whole", "\\x41, \\u03A9", "write the character itself"),
        ("Unicode", "a backslash code that is no character", "\\x41, \\u03A9", "write the character itself"),
        ("expected '-' indicator", "a line without a hyphen among the lines of a list", "every line of a list beginning with '- '", "begin it with '- ', or move it to the depth of the keys"),
        ("did not find expected key", "a line that is no key with a value", "'key: value', at the depth of its neighbours", "see whether the colon or the space behind it is missing, or the depth is off"),
        ("could not find expected ':'", "a line that is no key with a value", "'key: value', at the depth of its neighbours", "see whether the colon or the space behind it is missing"),
        ("cannot start any token", "a value that begins with a character of YAML's own", "a value that begins with a letter, a digit or a quote", Quotes),
        ("disallowed", "a value that begins with '*' or '&'", "a value that begins with a letter, a digit or a quote", Quotes),
        ("Block sequence entries are not allowed", "a list that begins on the line of its key", "the '- ' of a list on a line of its own", "begin a new line, or write the list in brackets"),
        ("Mapping keys are not allowed", "a '?' where a value is expected", "a value", "put quotes around it, or write 'unknown'"),
        ("Mapping values are not allowed", "a ': ' in a place where no key can stand", "'key: value', at the depth of its neighbours", Quotes),
        ("expected <document end>", "something behind the end", "one map of keys", "see whether a bracket is closed twice, or a line begins too far left"),
        ("did not find expected node content", "nothing where a value is expected", "a value", "take the comma or colon out, or write the value"),
        ("Global tags", "a '!' in front of a value", "values without tags", Quotes),
        ("YAML document", "a version of YAML other than 1.2", "no line with %YAML", "take the line out"),
        ("directive", "a line that begins with '%'", "no such line", "take the line out"),
    ];

    /// <summary>The finding for a message of the parser.</summary>
    public static Finding Finding(string theirs, Place at, Place? openBracket = null)
    {
        if (theirs.Contains("',' or", StringComparison.Ordinal) && openBracket is { } open)
            return Unclosed(open, at);
        foreach (var row in Table)
        {
            if (theirs.Contains(row.Theirs, StringComparison.Ordinal))
                return Make(at, row.Given, row.Allowed, row.Advice);
        }

        return Make(at, "something that is not YAML", "'key: value', at the depth of its neighbours", "compare the line with those around it");
    }

    /// <summary>The finding for a bracket that is still open at the end of the text, or where something else than a comma follows.</summary>
    public static Finding Unclosed(Place bracket, Place? noticed = null)
    {
        var where = noticed is { } at ? $" before line {at.Line}, column {at.Column}" : "";
        return Make(bracket, $"a bracket that is not closed{where}", "as many closing brackets as opening ones, and a comma between two values", "close it, or put the missing comma");
    }

    private static Finding Make(Place at, string given, string allowed, string advice) =>
        new(Severity.Error, FileCodes.Syntax.Code, at, given, allowed, advice);
}
