using System.Text;

namespace Headroom.Cli.Tests.House;

/// <summary>Splits a command of a page into its words as a shell would: at spaces, but not within quotes.</summary>
internal static class ShellWords
{
    private const string NeedsAShell = "|&;<>$`\\*?~";

    public static string[] Split(string command)
    {
        var words = new List<string>();
        StringBuilder? word = null;
        char? quote = null;
        foreach (var c in command)
        {
            if (quote is not null ? c == quote : c is '"' or '\'')
            {
                quote = quote is null ? c : null;
                word ??= new StringBuilder();
            }
            else if (quote is null && c == ' ')
            {
                Finish();
            }
            else
            {
                Assert.False(quote is null && NeedsAShell.Contains(c, StringComparison.Ordinal), $"'{c}' needs a shell: {command}");
                (word ??= new StringBuilder()).Append(c);
            }
        }

        Assert.True(quote is null, $"A quote is not closed: {command}");
        Finish();
        return [.. words];

        void Finish()
        {
            if (word is not null)
                words.Add(word.ToString());
            word = null;
        }
    }
}
