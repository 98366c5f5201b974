namespace Sightglass.Plant.Plans;

/// <summary>Where one world works out a resolver that looks at a row of inputs and at nothing else.</summary>
internal abstract class InputRoom : ResolverRoom
{
    private readonly Resolver _resolver;
    private readonly ReadOnlyMemory<ResolverInput> _inputs;
    private readonly double[] _next;
    private readonly double[] _found;

    protected InputRoom(Resolver resolver, ReadOnlyMemory<ResolverInput> inputs)
    {
        (_resolver, _inputs) = (resolver, inputs);
        Given = new double[inputs.Length];
        _next = new double[inputs.Length];
        _found = new double[resolver.Sets.Length];
        Forget();
    }

    /// <summary>The inputs' values that it was worked out for last.</summary>
    protected double[] Given { get; }

    public sealed override ReadOnlySpan<double> Values => _found;

    public sealed override bool Solve(LaneBank bank, int lane, ReadOnlySpan<double> slots)
    {
        Take(bank, lane, slots, _next);
        if (_next.AsSpan().SequenceEqual(Given))
        {
            return false;
        }

        _next.CopyTo(Given, 0);
        Work(slots, _found);
        return true;
    }

    public sealed override void Remember(LaneBank bank, int lane, ReadOnlySpan<double> slots)
    {
        Take(bank, lane, slots, Given);
        for (int i = 0; i < _found.Length; i++)
        {
            _found[i] = slots[_resolver.Sets[i].Index];
        }
    }

    public sealed override void Forget() => Array.Fill(Given, double.NaN);

    /// <summary>Works it out for <see cref="Given"/>.</summary>
    /// <param name="slots">As they are: what the resolver itself set last is among them.</param>
    /// <param name="found">Takes a value for each slot that it sets.</param>
    protected abstract void Work(ReadOnlySpan<double> slots, double[] found);

    private void Take(LaneBank bank, int lane, ReadOnlySpan<double> slots, double[] into)
    {
        for (int i = 0; i < into.Length; i++)
        {
            into[i] = _inputs.Span[i].Of(bank, lane, slots);
        }
    }
}
