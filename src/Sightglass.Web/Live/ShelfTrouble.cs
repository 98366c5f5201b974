using Sightglass.Basics.Diagnostics;

namespace Sightglass.Web.Live;

/// <summary>Why a book was not taken.</summary>
/// <param name="First">The first error in the order of the files, with its place.</param>
/// <param name="More">How many there are beside it.</param>
public sealed record ShelfTrouble(Diagnostic First, int More)
{
    internal static ShelfTrouble Of(DiagnosticList found)
    {
        Diagnostic[] errors = [.. found.Where(d => d.Severity == Severity.Error)];
        return new(errors[0], errors.Length - 1);
    }
}
