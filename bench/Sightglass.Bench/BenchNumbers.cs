namespace Sightglass.Bench;

/// <summary>The numbers behind a bench's name.</summary>
internal sealed class BenchNumbers(int[] typed)
{
    /// <summary>The number typed at a place, or the usual one.</summary>
    public int Or(int usual, int at = 0) => typed.Length > at ? typed[at] : usual;
}
