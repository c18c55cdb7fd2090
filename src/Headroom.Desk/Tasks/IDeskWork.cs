using Headroom.Desk.Work;

namespace Headroom.Desk.Tasks;

/// <summary>One kind of long work.</summary>
internal interface IDeskWork
{
    /// <summary>What it is called in the store.</summary>
    string Kind { get; }

    /// <summary>Does it.</summary>
    /// <param name="open">The job, sound.</param>
    /// <param name="asked">What was asked for: a design, and what its kind wants.</param>
    /// <param name="at">Who asked, what to tell, and when to stop.</param>
    /// <returns>What it came to.</returns>
    byte[] Do(OpenJob open, WorkAsked asked, WorkPlace at);
}
