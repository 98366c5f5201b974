using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using Sightglass.World.Agenda;
using Sightglass.World.Situations;

namespace Sightglass.World.Snapshots;

/// <summary>
/// Everything a world needs to go on as if it had never stopped, by name. Taken at rest. The pending step is not kept: it is proposed
/// again from the committed state and comes out the same, bit for bit, on the same build.
/// </summary>
public sealed record WorldSnapshot
{
    /// <summary>Raised when older snapshots can no longer be read as they stand.</summary>
    public const int CurrentFormat = 1;

    public int Format { get; init; } = CurrentFormat;

    /// <summary>Ticks.</summary>
    public required long Now { get; init; }

    /// <summary>Ticks at which a sentinel fires in the pending step, or the largest number.</summary>
    public required long FireAt { get; init; }

    public required long JudgedFrom { get; init; }

    public required ulong Trajectory { get; init; }

    public required long FiringsSince { get; init; }

    /// <summary>How often switches have fired since, by their places in the plan; those that have not are left out.</summary>
    public ImmutableSortedDictionary<int, int> Fired { get; init; } = ImmutableSortedDictionary<int, int>.Empty;

    /// <summary>The systems that were not stepped.</summary>
    public ImmutableArray<string> LeftOut { get; init; } = [];

    /// <summary>Those that were, in order.</summary>
    public required ImmutableArray<NetworkSnapshot> Networks { get; init; }

    public required ImmutableSortedDictionary<string, double> Slots { get; init; }

    public required ImmutableArray<AgendaSnapshot> Agenda { get; init; }

    public required ImmutableArray<PersonSnapshot> People { get; init; }

    public required ImmutableArray<WorldAction> Actions { get; init; }

    public required ImmutableArray<DrawnFault> Faults { get; init; }

    /// <summary>Last values of sentinels by their owners' numbers.</summary>
    public required ImmutableArray<SentinelSnapshot> Sentinels { get; init; }

    /// <summary>Locks, chocks and signals that stand.</summary>
    public ImmutableArray<Hazards.Guard> Guards { get; init; } = [];

    /// <summary>How questions are answered, or null where no situation says so.</summary>
    public AnswersSnapshot? Answers { get; init; }

    public CardRunSnapshot? Run { get; init; }

    public string ToJson() => JsonSerializer.Serialize(this, s_options);

    /// <exception cref="JsonException">The text is no snapshot, or of another format.</exception>
    public static WorldSnapshot FromJson(string text)
    {
        WorldSnapshot read = JsonSerializer.Deserialize<WorldSnapshot>(text, s_options) ?? throw new JsonException("An empty snapshot.");
        return read.Format == CurrentFormat ? read : throw new JsonException($"A snapshot of format {read.Format}; this build reads format {CurrentFormat}.");
    }

    private static readonly JsonSerializerOptions s_options = new() { NumberHandling = JsonNumberHandling.AllowNamedFloatingPointLiterals };
}
