using System.Globalization;
using System.Text;

namespace Headroom.Store;

/// <summary>Names of jobs as they stand in addresses and commands.</summary>
public static class JobId
{
    private const int Most = 48;

    /// <summary>The id made of a name: small letters, digits and hyphens.</summary>
    /// <param name="name">The name people say.</param>
    public static string Of(string name)
    {
        var id = new StringBuilder();
        foreach (var letter in name.Normalize(NormalizationForm.FormD))
        {
            if (char.IsAsciiLetterOrDigit(letter))
                id.Append(char.ToLowerInvariant(letter));
            else if (CharUnicodeInfo.GetUnicodeCategory(letter) != UnicodeCategory.NonSpacingMark && id.Length > 0 && id[^1] != '-')
                id.Append('-');
        }

        var text = id.ToString(0, Math.Min(id.Length, Most)).Trim('-');
        return text.Length == 0 ? "job" : text;
    }
}
