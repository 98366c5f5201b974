using System.Collections.Concurrent;
using System.Collections.Immutable;

namespace Sightglass.Drawing.Labels;

/// <summary>
/// Remembers how a stretch of flags was placed. A stretch's placement depends on nothing but its requests and poles, and a walk draws the same
/// strip again and again with few flags changed: what is remembered need not be searched for a second time.
/// </summary>
internal static class FlagMemo
{
    /// <summary>A strip of the size of the demo's needs some hundreds.</summary>
    private const int Most = 8192;

    private static readonly ConcurrentDictionary<Stretch, ImmutableArray<FlagPlace>> s_known = new();

    /// <summary>One place for each request, in their order.</summary>
    public static ImmutableArray<FlagPlace> Place(FlagRequest[] requests, double[] poles, bool centre)
    {
        Stretch stretch = new(requests, poles, centre);
        if (s_known.TryGetValue(stretch, out ImmutableArray<FlagPlace> known))
        {
            return known;
        }

        if (s_known.Count >= Most)
        {
            s_known.Clear();
        }

        return s_known[stretch] = Search(requests, poles, centre);
    }

    private static ImmutableArray<FlagPlace> Search(FlagRequest[] requests, double[] poles, bool centre)
    {
        FlagCluster cluster = new(requests, poles, centre);
        FlagDirection[] directions = cluster.Search();
        int[] tiers = cluster.Tiers(directions)!;
        return [.. directions.Select((direction, k) =>
        {
            (double left, double right) = cluster.Extent(k, direction);
            return new FlagPlace(poles[k], left, right, tiers[k], direction);
        })];
    }

    /// <summary>What a placement depends on, compared by value.</summary>
    private readonly struct Stretch(FlagRequest[] requests, double[] poles, bool centre) : IEquatable<Stretch>
    {
        private readonly FlagRequest[] _requests = requests;
        private readonly double[] _poles = poles;
        private readonly bool _centre = centre;
        private readonly int _hash = HashOf(requests, poles, centre);

        public bool Equals(Stretch other) => _hash == other._hash && _centre == other._centre
            && _poles.AsSpan().SequenceEqual(other._poles) && _requests.AsSpan().SequenceEqual(other._requests);

        public override bool Equals(object? obj) => obj is Stretch other && Equals(other);

        public override int GetHashCode() => _hash;

        private static int HashOf(FlagRequest[] requests, double[] poles, bool centre)
        {
            HashCode hash = new();
            hash.Add(centre);
            for (int i = 0; i < requests.Length; i++)
            {
                hash.Add(requests[i]);
                hash.Add(poles[i]);
            }

            return hash.ToHashCode();
        }
    }
}
