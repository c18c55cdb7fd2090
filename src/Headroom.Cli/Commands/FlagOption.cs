using System.CommandLine;

namespace Headroom.Cli.Commands;

/// <summary>An option without a value.</summary>
internal sealed class FlagOption : Option<bool>
{
    /// <summary>An option that is there or not.</summary>
    public FlagOption(string name, string about)
        : base(name)
    {
        Description = about;
        Arity = ArgumentArity.Zero;
    }
}
