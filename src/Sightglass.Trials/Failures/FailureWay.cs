using Sightglass.Basics.Language;
using Sightglass.Book.Model;

namespace Sightglass.Trials.Failures;

/// <summary>A way that is longer with the failure, or is none any more.</summary>
/// <param name="From">Where one stands: where the item is met.</param>
/// <param name="To">Where one wants to go.</param>
/// <param name="Farther">s more at an ordinary pace, for whoever knows; infinite where there is no way any more.</param>
public sealed record FailureWay(Place From, Place To, double Farther)
{
    /// <summary><c>47 s farther from cab steps, right to cab</c>.</summary>
    public string Words => double.IsInfinity(Farther) ? Say.With($"no way any more from {From.Name} to {To.Name}") : Say.With($"{Farther:0} s farther from {From.Name} to {To.Name}");
}
