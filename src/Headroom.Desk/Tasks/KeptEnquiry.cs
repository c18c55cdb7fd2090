using System.Text;
using System.Text.Json;

namespace Headroom.Desk.Tasks;

/// <summary>An enquiry note: what is known of a job, what it may cost, and what is still to be asked.</summary>
/// <param name="Job">The name of the job.</param>
/// <param name="On">The day, as pages write it.</param>
/// <param name="By">Who wrote it.</param>
/// <param name="Known">What is known, a line each.</param>
/// <param name="Price">The rough price, in a sentence; that it is not known where it is not.</param>
/// <param name="RestsOn">What the price rests on, a line each.</param>
/// <param name="Asked">What is still to be asked, a line each.</param>
public sealed record KeptEnquiry(string Job, string On, string By, IReadOnlyList<string> Known, string Price, IReadOnlyList<string> RestsOn, IReadOnlyList<string> Asked)
{
    /// <summary>As bytes.</summary>
    public byte[] ToBytes() => JsonSerializer.SerializeToUtf8Bytes(this);

    /// <summary>From bytes; null when they are none.</summary>
    /// <param name="bytes">The bytes.</param>
    public static KeptEnquiry? Read(ReadOnlySpan<byte> bytes) => JsonSerializer.Deserialize<KeptEnquiry>(bytes);

    /// <summary>As a text to be sent.</summary>
    public string ToText()
    {
        var text = new StringBuilder();
        text.Append(System.Globalization.CultureInfo.InvariantCulture, $"{Job}\nEnquiry note of {On}, {By}\n");
        Section(text, "What is known", Known);
        Section(text, "Rough price", [Price, .. RestsOn]);
        Section(text, "Still to be asked", Asked);
        return text.ToString();
    }

    private static void Section(StringBuilder text, string head, IReadOnlyList<string> lines)
    {
        if (lines.Count == 0)
            return;
        text.Append('\n').Append(head).Append('\n');
        foreach (var line in lines)
            text.Append("- ").Append(line).Append('\n');
    }
}
