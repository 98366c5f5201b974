using System.Collections.Immutable;

namespace Sightglass.Web.Room.Trainee;

/// <summary>A list that is the same as another one with the same members in the same order.</summary>
internal readonly record struct Listed<T>(ImmutableArray<T> All)
    where T : IEquatable<T>
{
    public bool Equals(Listed<T> other) => All == other.All || All.AsSpan().SequenceEqual(other.All.AsSpan());

    public override int GetHashCode() => All.Length == 0 ? 0 : HashCode.Combine(All.Length, All[0]);
}
