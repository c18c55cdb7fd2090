using Headroom.Domain.Findings;
using Headroom.Domain.Quantities;

namespace Headroom.Engineering.Binding;

/// <summary>Says in words where a value comes from.</summary>
public static class Origins
{
    /// <summary>The origin of a value: the word written behind it and its place.</summary>
    /// <typeparam name="T">The quantity.</typeparam>
    /// <param name="given">The value; null when not known.</param>
    /// <returns>Words such as <c>measured, job.yaml:12:5</c>.</returns>
    public static string Of<T>(Given<T>? given)
        where T : struct => given is null ? "not known" : Of(given.Origin, given.At);

    /// <summary>The origin of a value: the word written behind it and its place.</summary>
    /// <param name="origin">The word.</param>
    /// <param name="at">The place.</param>
    /// <returns>Words such as <c>measured, job.yaml:12:5</c>.</returns>
    public static string Of(Origin origin, Place at)
    {
        var place = at.ToString();
        var word = origin switch
        {
            Origin.Measured => "measured",
            Origin.Declared => "declared",
            Origin.Standard => "standard",
            Origin.Assumed => "assumed",
            Origin.Invented => "invented",
            _ => "",
        };
        return word.Length == 0 ? place : place.Length == 0 ? word : $"{word}, {place}";
    }
}
