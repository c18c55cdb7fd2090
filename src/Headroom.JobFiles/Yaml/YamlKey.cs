namespace Headroom.JobFiles.Yaml;

/// <summary>Compares keys: a hyphen and a space are the same, since nobody remembers which it was.</summary>
public static class YamlKey
{
    /// <summary>Says whether two keys are the same.</summary>
    /// <param name="left">One key.</param>
    /// <param name="right">The other.</param>
    /// <returns>True when they are.</returns>
    public static bool Same(string left, string right)
    {
        if (left.Length != right.Length)
            return false;
        for (var i = 0; i < left.Length; i++)
        {
            if (left[i] != right[i] && !(left[i] is ' ' or '-' && right[i] is ' ' or '-'))
                return false;
        }

        return true;
    }

    /// <summary>The form of a key under which it can be looked up.</summary>
    /// <param name="key">The key as written.</param>
    /// <returns>The key with spaces for hyphens.</returns>
    public static string Plain(string key) => key.Replace('-', ' ');
}
