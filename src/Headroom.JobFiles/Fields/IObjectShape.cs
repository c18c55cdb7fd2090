namespace Headroom.JobFiles.Fields;

/// <summary>A thing with keys, for the schema and the manual.</summary>
internal interface IObjectShape
{
    /// <summary>What it is called.</summary>
    string Noun { get; }

    /// <summary>The keys it may have.</summary>
    IReadOnlyList<Field> Fields { get; }

    /// <summary>What the manual says about it beyond its keys; null when nothing.</summary>
    string? About { get; }
}
