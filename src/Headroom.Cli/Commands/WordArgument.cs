using System.CommandLine;

namespace Headroom.Cli.Commands;

/// <summary>The words a command takes, with its own complaint about too few, too many, or a word that looks like an option.</summary>
internal sealed class WordArgument : Argument<string[]>
{
    private readonly int _least;

    /// <summary>Takes between so many and so many words.</summary>
    /// <param name="name">What they are: <c>JOB</c>.</param>
    /// <param name="least">The fewest.</param>
    /// <param name="most">The most.</param>
    public WordArgument(string name, int least, int most)
        : base(name)
    {
        _least = least;
        Arity = ArgumentArity.ZeroOrMore;
        Validators.Add(result =>
        {
            var words = result.Tokens.Select(token => token.Value).ToList();
            var options = words.Where(word => word.Length > 1 && word[0] == '-' && !char.IsAsciiDigit(word[1])).ToList();
            foreach (var option in options)
                result.AddError(UsageErrors.NoOption(result, option));
            if (options.Count == 0 && words.Count > most)
                result.AddError($"{UsageErrors.PathOf(result)} takes {name} and no more; '{words[most]}' is too much");
        });
    }

    /// <summary>Adds it to a command. The command asks for the fewest: an argument without any word is not asked itself.</summary>
    public WordArgument AddTo(Command command)
    {
        command.Add(this);
        command.Validators.Add(result =>
        {
            var words = result.GetResult(this)?.Tokens.Select(token => token.Value).ToList() ?? [];
            if (words.Count < _least && !words.Exists(word => word.StartsWith('-')))
                result.AddError($"{UsageErrors.PathOf(result)} needs {Name}");
        });
        return this;
    }
}
