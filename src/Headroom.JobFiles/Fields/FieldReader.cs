using System.Diagnostics.CodeAnalysis;
using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;
using Headroom.JobFiles.Files;
using Headroom.JobFiles.Yaml;

namespace Headroom.JobFiles.Fields;

/// <summary>What goes along while a file is read: the findings so far, and where in the file we are, in words.</summary>
/// <param name="prefix">The letters in front of the codes of this kind of file.</param>
internal sealed class FieldReader(string prefix)
{
    /// <summary>The most findings that are listed; nobody mends more in one go.</summary>
    public const int MostListed = 500;

    private readonly List<string> _path = [];
    private readonly List<string> _examples = [];
    private readonly List<Finding> _findings = [];

    /// <summary>True when something was left out of what was read, so that rules about the whole would speak of things that are there.</summary>
    public bool LeftOut { get; private set; }

    /// <summary>Where we are, in words: <c>length of drop K-17</c>.</summary>
    public string Name => string.Join(" of ", Enumerable.Reverse(_path));

    /// <summary>How a right value looks here.</summary>
    public string Example => _examples.Count > 0 ? _examples[^1] : "";

    /// <summary>How many things ranges and counts have stood for so far.</summary>
    public int Counted { get; set; }

    /// <summary>True when no more findings are listed.</summary>
    public bool IsFull => _findings.Count >= MostListed;

    /// <summary>All findings, in order of place.</summary>
    public List<Finding> Findings => YamlText.InOrder(_findings);

    /// <summary>Reads a value, or says that it is not known.</summary>
    /// <returns>False when nobody knows it, and when a finding was made.</returns>
    public bool TryRead<T>(Shape<T> shape, YamlNode node, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (node is not YamlScalar scalar)
            return Keep(shape, shape.Read(node, this, out value));
        if (scalar.Style == YamlStyle.Refused)
            return Keep(shape, false);
        if (scalar.IsUnknown)
            return false;
        if (!scalar.IsEmpty || shape.TakesNothing)
            return Keep(shape, shape.Read(node, this, out value));
        Ask(Slips.Empty, node.At, $"{Name} is empty", shape.InWords, "write the value, or leave the key out when it is not known");
        return false;
    }

    /// <summary>Goes into a named part; what is found there is told with its name.</summary>
    public Step Into(string name, string? example = null)
    {
        _path.Add(Words.Short(name));
        _examples.Add(example ?? Example);
        return new Step(this);
    }

    /// <summary>Adds a finding that stands in the way.</summary>
    public void Refuse(Slip slip, Place at, string given, string allowed, string advice) =>
        Add(new Finding(Severity.Error, slip.Code(prefix), at, given, allowed, advice));

    /// <summary>Adds a finding that asks.</summary>
    public void Ask(Slip slip, Place at, string given, string allowed, string advice) =>
        Add(new Finding(Severity.Question, slip.Code(prefix), at, given, allowed, advice));

    /// <summary>Notes that something was left out of what was read.</summary>
    public void LeaveOut() => LeftOut = true;

    /// <summary>The advice for a word that is not known: the nearest that is, or a general one.</summary>
    public string Meant(string word, IEnumerable<string> known, string otherwise) =>
        !IsFull && Spelling.Nearest(word, known) is { } near ? $"did you mean '{near}'?" : otherwise;

    private bool Keep(Shape shape, bool read)
    {
        LeftOut |= !read && !shape.IsScalar;
        return read;
    }

    private void Add(Finding finding)
    {
        if (_findings.Count < MostListed)
            _findings.Add(finding);
        else if (_findings.Count == MostListed)
            _findings.Add(new Finding(Severity.Error, FileCodes.More.Code, finding.At, $"more findings than the {MostListed} listed", "none of them", "mend those listed, then check again"));
    }

    /// <summary>One step into a part; it ends when disposed of.</summary>
    internal readonly struct Step(FieldReader reader) : IDisposable
    {
        public void Dispose()
        {
            reader._path.RemoveAt(reader._path.Count - 1);
            reader._examples.RemoveAt(reader._examples.Count - 1);
        }
    }
}
