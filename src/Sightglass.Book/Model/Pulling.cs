using System.Collections.Immutable;

namespace Sightglass.Book.Model;

/// <summary>How a machine pulls.</summary>
/// <param name="Engine">The item that burns the fuel.</param>
/// <param name="Handle">The control whose positions are its notches.</param>
/// <param name="Power">W at the rail by position of the handle; 0 where nothing is written.</param>
/// <param name="Most">N at the rail that the motors give at the start, whatever the rail holds.</param>
/// <param name="DrivenAxles">How many.</param>
/// <param name="HeadEndCosts">W at the rail that each W for the cars takes away, 0…1; 0 where the engine has power for both.</param>
public sealed record Pulling(string Engine, string Handle, ImmutableSortedDictionary<string, double> Power, double Most, int DrivenAxles, double HeadEndCosts)
{
    /// <summary>Positions from the least power to the most.</summary>
    public ImmutableArray<string> Notches => [.. Power.OrderBy(p => p.Value).ThenBy(p => p.Key, StringComparer.Ordinal).Select(p => p.Key)];

    /// <summary>W at the rail, all out.</summary>
    public double Greatest => Power.Values.DefaultIfEmpty(0).Max();
}
