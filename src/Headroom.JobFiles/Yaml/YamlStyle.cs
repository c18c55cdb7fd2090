namespace Headroom.JobFiles.Yaml;

/// <summary>How a text was written.</summary>
public enum YamlStyle
{
    /// <summary>As it is, without quotes.</summary>
    Plain,

    /// <summary>In single or double quotes.</summary>
    Quoted,

    /// <summary>As a block of lines under a <c>|</c> or <c>&gt;</c>.</summary>
    Block,

    /// <summary>It stands for an alias, which is refused: a finding was made, and nothing more is to be said about it.</summary>
    Refused,
}
