using System.Collections.Immutable;
using System.Text.Json.Serialization;
using Sightglass.Basics.Time;
using Sightglass.Book.Model;
using Sightglass.Trials.Failures;

namespace Sightglass.Cli.Output;

/// <summary>What happens if items fail, for a program.</summary>
internal sealed record FailsAnswer(string Situation, double AfterS, ImmutableArray<FailsAnswer.Row> Items)
{
    public static FailsAnswer Of(Situation situation, SimTime time, IEnumerable<Item> items, IReadOnlyDictionary<string, ImmutableArray<Failure>> failures) => new(
        situation.Name, time.Seconds, [.. items.Select(i => new Row(i.Name, i.Kind.Name, i.Holds, i.IfItFails.Length > 0 ? i.IfItFails : null, failures.TryGetValue(i.Name, out ImmutableArray<Failure> own) ? [.. own.Select(Fault)] : []))]);

    private static One Fault(Failure failure) => new(failure.Fault, failure.IsHidden, [.. failure.NoLonger.Select(f => f.Name)], [.. failure.Now.Select(f => f.Name)], [.. failure.Changes.Select(c => c.Words)], failure.Trouble)
    {
        Ways = [.. failure.Ways.Select(w => new Way(w.From.Name, w.To.Name, double.IsInfinity(w.Farther) ? null : w.Farther))],
        Cards = failure.Cards,
        Protections = failure.Protections,
        Told = [.. failure.Told()],
    };

    /// <summary>An item: without faults where it is described and not alive; then with what it holds, or what the book tells.</summary>
    internal sealed record Row(string Item, string Kind, ImmutableArray<string> Holds, string? Told, ImmutableArray<One> Faults);

    /// <summary>One of its faults.</summary>
    internal sealed record One(string Fault, bool Hidden, ImmutableArray<string> NoLonger, ImmutableArray<string> Now, ImmutableArray<string> Shows, string? Trouble)
    {
        /// <summary>Ways that are longer, or none any more.</summary>
        public ImmutableArray<Way> Ways { get; init; } = [];

        /// <summary>Cards that cannot be worked.</summary>
        public ImmutableArray<string> Cards { get; init; } = [];

        /// <summary>Protections that cannot be set.</summary>
        public ImmutableArray<string> Protections { get; init; } = [];

        /// <summary>All of it in words.</summary>
        [JsonIgnore]
        public ImmutableArray<string> Told { get; init; } = [];
    }

    /// <summary>From where to where, and s farther at an ordinary pace; null where there is no way any more.</summary>
    internal sealed record Way(string From, string To, double? FartherS);
}
