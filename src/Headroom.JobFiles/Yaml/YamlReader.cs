using Headroom.Domain.Findings;
using Headroom.JobFiles.Files;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Headroom.JobFiles.Yaml;

/// <summary>Builds the tree from the events of the parser, so that nothing is looked up by reflection and every mark is kept.</summary>
internal sealed class YamlReader(string text, Place first, int offset, List<Finding> findings)
{
    private readonly Parser _parser = new(new StringReader(UnknownMarks.Hide(text)));
    private readonly Stack<ParsingEvent> _open = new();
    private readonly List<Finding> _findings = findings;
    private int _nodes;
    private bool _stopped;

    /// <summary>Reads the one document; null when there is none or the text is broken.</summary>
    public YamlNode? ReadDocument()
    {
        YamlNode? root = null;
        while (!_stopped && Next() is { } next)
        {
            if (next is DocumentStart && root is not null)
                Stop(FileCodes.SecondDocument, next, ("a second document", "one document in a file", "put it into a file of its own"));
            else if (root is null && next is NodeEvent or AnchorAlias)
                root = Node(next);
        }

        return _stopped ? null : root;
    }

    private ParsingEvent? Next()
    {
        try
        {
            return !_stopped && _parser.MoveNext() ? _parser.Current : null;
        }
        catch (YamlException slip)
        {
            _stopped = true;
            _findings.Add(SyntaxWords.Finding(slip.Message, PlaceOf(slip.Start), OpenBracket()));
        }
        catch (Exception slip) when (slip is InvalidOperationException or ArgumentException)
        {
            // Slips of the library, found by trying: a text that ends inside a bracket, and a tag that is no address.
            _stopped = true;
            _findings.Add(slip is InvalidOperationException && OpenBracket() is { } open
                ? SyntaxWords.Unclosed(open)
                : SyntaxWords.Finding(slip.Message, _parser.Current is { } last ? PlaceOf(last.End) : first));
        }

        return null;
    }

    private YamlNode Node(ParsingEvent at)
    {
        if (++_nodes > YamlText.MostNodes)
            Stop(FileCodes.TooMany, at, ($"more than {YamlText.MostNodes} keys and values", "no more than that", "see whether it is the right file"));
        if (_open.Count >= YamlText.MostDepth)
            Stop(FileCodes.TooDeep, at, ($"things {_open.Count + 1} deep", $"at most {YamlText.MostDepth} deep", "write it flatter"));
        if (!_stopped)
            CheckPlain(at);
        return at switch
        {
            MappingStart map => Map(map),
            SequenceStart list => List(list),
            Scalar scalar => Text(scalar),
            _ => new YamlScalar("", YamlStyle.Refused, PlaceOf(at.Start), SpanOf(at)),
        };
    }

    private void CheckPlain(ParsingEvent at)
    {
        if (at is AnchorAlias alias)
            Refuse(FileCodes.Anchor, at, ($"the alias '*{alias.Value}'", "each thing written where it stands", "write it out, or use 'like:' where a design or model differs little from another"));
        if (at is not NodeEvent node)
            return;
        if (!node.Anchor.IsEmpty)
            Refuse(FileCodes.Anchor, node, ($"the anchor '&{node.Anchor.Value}'", "each thing written where it stands", "take it out"));
        if (!node.Tag.IsEmpty)
            Refuse(FileCodes.Tag, node, ($"the tag '{Words.Short(FirstWord(node))}'", "values without tags", "take it out; a text is put in quotes"));
    }

    private string FirstWord(ParsingEvent at)
    {
        var from = text.AsSpan((int)at.Start.Index);
        var end = from.IndexOfAny(" \r\n");
        return (end < 0 ? from : from[..end]).ToString();
    }

    private YamlMap Map(MappingStart start)
    {
        _open.Push(start);
        var entries = new List<YamlEntry>();
        var keys = new Dictionary<string, Place>();
        ParsingEvent? next;
        while ((next = Next()) is not null and not MappingEnd)
        {
            var key = Key(Node(next));
            var value = Next() is { } behind ? Node(behind) : null;
            if (key is null || value is null)
                continue;
            if (keys.TryAdd(key.Text, key.At))
                entries.Add(new YamlEntry(key, value));
            else
                _findings.Add(Twice(key, keys[key.Text]));
        }

        _open.Pop();
        var isFlow = start.Style == MappingStyle.Flow;
        var span = Span(start, next, isFlow && HasBracket(start), (entries.FirstOrDefault()?.Key, entries.LastOrDefault()?.Value));
        return new YamlMap(entries, isFlow, HasBracket(start) || entries.Count == 0 ? PlaceOf(start.Start) : entries[0].Key.At, span);
    }

    private YamlScalar? Key(YamlNode node)
    {
        if (_stopped)
            return null;
        if (node is not YamlScalar key)
        {
            _findings.Add(new(Severity.Error, FileCodes.KeyIsNoText.Code, node.At, $"{node.What} as a key", "a text as a key", "put quotes around it when a text is meant; take a '?' in front of it out"));
            return null;
        }

        if (key is not { Text: "<<", Style: YamlStyle.Plain })
            return key;
        _findings.Add(new(Severity.Error, FileCodes.Merge.Code, key.At, "the merge key '<<'", "each thing written where it stands", "write it out, or use 'like:' where a design or model differs little from another"));
        return null;
    }

    private YamlList List(SequenceStart start)
    {
        _open.Push(start);
        var items = new List<YamlNode>();
        ParsingEvent? next;
        while ((next = Next()) is not null and not SequenceEnd)
            items.Add(Node(next));
        _open.Pop();
        var isFlow = start.Style == SequenceStyle.Flow;
        return new YamlList(items, isFlow, PlaceOf(start.Start), Span(start, next, isFlow, (items.FirstOrDefault(), items.LastOrDefault())));
    }

    private YamlScalar Text(Scalar scalar)
    {
        var style = scalar.Style switch
        {
            ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted => YamlStyle.Quoted,
            ScalarStyle.Literal or ScalarStyle.Folded => YamlStyle.Block,
            _ => YamlStyle.Plain,
        };
        var value = UnknownMarks.Restore(scalar.Value);
        var odd = scalar.Style == ScalarStyle.DoubleQuoted ? OddCharacters.Next(value) : -1;
        // Written plainly, the character was found before; here it is hidden in an escape such as "\u202E".
        if (odd >= 0 && Written(scalar).IndexOf(value[odd]) < 0)
            _findings.Add(TextGuard.Odd(value[odd], PlaceOf(scalar.Start)));
        return new YamlScalar(value, style, PlaceOf(scalar.Start), SpanOf(scalar));
    }

    // The end that the parser tells of a block is where the next thing begins; of a bracket, where the bracket stands.
    private (int Start, int End) Span(ParsingEvent start, ParsingEvent? end, bool isFlow, (YamlNode? First, YamlNode? Last) inside)
    {
        if (isFlow && end is not null)
            return ((int)start.Start.Index + offset, (int)end.Start.Index + 1 + offset);
        var from = start is SequenceStart ? (int)start.Start.Index + offset : inside.First?.Start;
        return inside.Last is { } last && from is { } begin ? (begin, last.End) : SpanOf(start);
    }

    private (int Start, int End) SpanOf(ParsingEvent at)
    {
        var start = (int)at.Start.Index;
        return (start + offset, start + Written(at).Length + offset);
    }

    // The end that the parser tells of an empty value with an anchor can lie before its beginning.
    private ReadOnlySpan<char> Written(ParsingEvent at) =>
        text.AsSpan((int)at.Start.Index, Math.Max(0, (int)(at.End.Index - at.Start.Index))).TrimEnd();

    // A single pair inside a list, [a: b], is a map without braces; the parser gives it no place.
    private bool HasBracket(MappingStart start) => start.Style != MappingStyle.Flow || text[(int)start.Start.Index] == '{';

    private Place? OpenBracket() => _open.FirstOrDefault(IsBracket) is { } open ? PlaceOf(open.Start) : null;

    private static bool IsBracket(ParsingEvent open) => open is MappingStart { Style: MappingStyle.Flow } or SequenceStart { Style: SequenceStyle.Flow };

    private Place PlaceOf(Mark mark) => new(first.File, (int)mark.Line - 1 + first.Line, (int)mark.Column + (mark.Line == 1 ? first.Column - 1 : 0));

    private static Finding Twice(YamlScalar key, Place before) => new(
        Severity.Error,
        FileCodes.Twice.Code,
        key.At,
        $"'{Words.Short(key.Text)}' a second time (first in line {before.Line}, column {before.Column})",
        "each key once",
        "keep one of them, or rename one");

    private void Stop(FindingCode code, ParsingEvent at, (string Given, string Allowed, string Advice) words)
    {
        if (!_stopped)
            Refuse(code, at, words);
        _stopped = true;
    }

    private void Refuse(FindingCode code, ParsingEvent at, (string Given, string Allowed, string Advice) words) =>
        _findings.Add(new(Severity.Error, code.Code, PlaceOf(at.Start), words.Given, words.Allowed, words.Advice));
}
