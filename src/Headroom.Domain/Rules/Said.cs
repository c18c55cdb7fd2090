namespace Headroom.Domain.Rules;

/// <summary>The three parts of a finding in words.</summary>
/// <param name="Given">What was given.</param>
/// <param name="Allowed">What is allowed there.</param>
/// <param name="Advice">What to do about it.</param>
internal readonly record struct Said(string Given, string Allowed, string Advice);
