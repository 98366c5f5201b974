using System.Collections.Immutable;
using Sightglass.Book.Model;

namespace Sightglass.Drawing.Ladder;

/// <summary>What a circuit drawing shows at one moment, by the names of wires and parts. What is not given is dead, open and dark.</summary>
public sealed record LadderState
{
    public static readonly LadderState Still = new();

    /// <summary>Hidden truth: V of each wire over the frame; what is drawn is over the lower rail.</summary>
    public ImmutableDictionary<string, double> Volts { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Hidden truth: A of each part, from its plus side to its minus side; of a source what it gives.</summary>
    public ImmutableDictionary<string, double> Amperes { get; init; } = ImmutableDictionary<string, double>.Empty;

    /// <summary>Contacts, switches and breakers that are made.</summary>
    public ImmutableHashSet<string> Made { get; init; } = [];

    /// <summary>Lamps that are lit, coils that are up, motors and loads that work.</summary>
    public ImmutableHashSet<string> At { get; init; } = [];

    /// <summary>Whether hidden truth is shown.</summary>
    public bool ShowTruth { get; init; } = true;

    /// <summary>Without current: switches and breakers stand as usual, contacts as their springs hold them.</summary>
    public static LadderState Usual(ClassBook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        return new()
        {
            ShowTruth = false,
            Made =
            [
                .. book.Items.Values.Where(i => i.Kind.Conducts && i.Positions.Length > 1 && i.Positions.IndexOf(i.UsualPosition ?? i.Kind.UsualPosition ?? i.Positions[0]) > 0).Select(i => i.Name),
                .. book.Items.Values.Where(i => i.Kind.Conducts && i.Parameters.TryGetValue("closes when", out ParameterValue? value) && value.Text == "dropped").Select(i => i.Name),
            ],
        };
    }

    /// <summary>A below which nothing is said to flow.</summary>
    public const double Least = 0.005;

    /// <summary>V below which nothing is said.</summary>
    public const double Said = 0.5;

    /// <summary>V below which a wire is drawn dead.</summary>
    public const double Dead = 5;
}
