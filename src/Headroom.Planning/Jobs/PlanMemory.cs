namespace Headroom.Planning.Jobs;

/// <summary>Keeps what units come to by themselves, for plans of jobs that differ in nothing that matters to it.</summary>
internal sealed class PlanMemory
{
    private readonly Dictionary<string, AloneAnswer> _alone = [];
    private readonly Dictionary<string, double> _standby = [];

    /// <summary>What a unit alone comes to, kept or worked out.</summary>
    public AloneAnswer Alone(string key, Func<AloneAnswer> work) => _alone.TryGetValue(key, out var known) ? known : _alone[key] = work();

    /// <summary>What a standby supply feeds, kept or worked out.</summary>
    public double Standby(string key, Func<double> work) => _standby.TryGetValue(key, out var known) ? known : _standby[key] = work();
}
