using Headroom.Domain.Findings;

namespace Headroom.Domain.Rules;

/// <summary>One rule of a well-formed job.</summary>
/// <param name="Code">The stable code, such as <c>RUL001</c>.</param>
/// <param name="Severity">Whether the work can go on when it is broken.</param>
/// <param name="Meaning">What is wrong when it is broken, in words.</param>
public sealed record RuleCode(string Code, Severity Severity, string Meaning);
