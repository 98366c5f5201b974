using Sightglass.Book.Model;

namespace Sightglass.World.Hazards;

/// <summary>A lock, a chock or a signal that stands.</summary>
/// <param name="Sort">Which of them.</param>
/// <param name="Protection">For a signal: which protection it is of; a lock or a chock is the same for all of them.</param>
/// <param name="Target">The item or place where it stands.</param>
/// <param name="Owner">The person who set it.</param>
public readonly record struct Guard(ProtectionSort Sort, string Protection, string Target, int Owner)
{
    public bool IsAt(Protection protection, string target) =>
        Sort == protection.Sort && Target == target && (Sort != ProtectionSort.SetAt || Protection == protection.Name);
}
