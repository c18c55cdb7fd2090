using System.Text.Json;

namespace Headroom.Desk.Shown;

/// <summary>A ledger as it was shown, kept with its revision.</summary>
/// <param name="Job">The name of the job.</param>
/// <param name="Design">The design; empty when the job had none.</param>
/// <param name="On">The day.</param>
/// <param name="Paragraphs">What stood above the table.</param>
/// <param name="Counts">How many entries had each verdict, in words.</param>
/// <param name="Money">What the offer came to; empty when it was not known.</param>
/// <param name="Next">What to do next, in a sentence.</param>
/// <param name="Rows">The rows, worst first.</param>
public sealed record KeptLedger(string Job, string Design, string On, IReadOnlyList<string> Paragraphs, string Counts, string Money, string Next, IReadOnlyList<KeptRow> Rows)
{
    /// <summary>Under what it is kept.</summary>
    public const string Part = "ledger";

    /// <summary>As bytes.</summary>
    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this);

    /// <summary>From bytes; null when they are none.</summary>
    /// <param name="bytes">The bytes.</param>
    public static KeptLedger? Read(ReadOnlySpan<byte> bytes) => JsonSerializer.Deserialize<KeptLedger>(bytes);

    /// <summary>That of a job that cannot be studied yet.</summary>
    /// <param name="job">The name of the job.</param>
    public static KeptLedger Without(string job) => new(job, "", "", ["The job has no design yet, so nothing is worked out."], "", "", "Let the planner propose a design, or write one.", []);
}
