using Sightglass.Network.Laws;
using Sightglass.Network.Laws.Common;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Compile;

/// <summary>Collects stores, paths and inputs, and compiles them into a <see cref="Topology"/>.</summary>
public sealed class NetworkBuilder
{
    private readonly List<StoreRow> _stores = [];
    private readonly List<PathRow> _paths = [];
    private readonly List<double> _parameters = [];
    private readonly List<double> _start = [];
    private readonly List<double> _spans = [];
    private readonly List<double> _inputs = [];

    /// <summary>Adds a store.</summary>
    /// <param name="name">For messages.</param>
    /// <param name="parameters">As <typeparamref name="TStore"/> documents them.</param>
    /// <param name="start">Its amounts at the start.</param>
    /// <param name="spans">The range that each potential moves in: errors are judged against it. Positive.</param>
    public StoreHandle AddStore<TStore>(string name, ReadOnlySpan<double> parameters, ReadOnlySpan<double> start, ReadOnlySpan<double> spans)
        where TStore : struct, IStore => Add<TStore>(name, parameters, start, spans, boundary: false);

    /// <summary>Adds a boundary: a store whose potential does not follow from its amount, which only books what passes.</summary>
    public StoreHandle AddBoundary<TStore>(string name, ReadOnlySpan<double> parameters)
        where TStore : struct, IStore => Add<TStore>(name, parameters, new double[TStore.Amounts], new double[TStore.Amounts], boundary: true);

    /// <summary>Adds an input with its value at the start.</summary>
    public Input AddInput(double start)
    {
        _inputs.Add(start);
        return new(_inputs.Count - 1);
    }

    /// <summary>Adds a path.</summary>
    /// <param name="name">For messages.</param>
    /// <param name="potentials">The potentials the law sees, in its order.</param>
    /// <param name="flows">What each of its flows takes from and gives to.</param>
    /// <param name="parameters">As <typeparamref name="TLaw"/> documents them.</param>
    /// <param name="inputs">As <typeparamref name="TLaw"/> documents them.</param>
    /// <exception cref="ArgumentException">A count differs from what the law says, or a law sees more than <see cref="ILaw"/> allows.</exception>
    public PathHandle AddPath<TLaw>(string name, ReadOnlySpan<Amount> potentials, ReadOnlySpan<Flow> flows, ReadOnlySpan<double> parameters, ReadOnlySpan<Input> inputs)
        where TLaw : struct, ILaw
    {
        Require(potentials.Length == TLaw.Potentials, name, "potentials", TLaw.Potentials, potentials.Length);
        Require(flows.Length == TLaw.Flows, name, "flows", TLaw.Flows, flows.Length);
        Require(parameters.Length == TLaw.Parameters, name, "parameters", TLaw.Parameters, parameters.Length);
        Require(inputs.Length == TLaw.Inputs, name, "inputs", TLaw.Inputs, inputs.Length);
        Require(TLaw.Potentials <= Row<double>.Length, name, "potentials or fewer", Row<double>.Length, TLaw.Potentials);
        Require(TLaw.Inputs <= Row<double>.Length, name, "inputs or fewer", Row<double>.Length, TLaw.Inputs);
        Require(TLaw.Flows <= ILaw.MostFlows, name, "flows or fewer", ILaw.MostFlows, TLaw.Flows);
        int first = _parameters.Count;
        _parameters.AddRange(parameters);
        _paths.Add(new(name, potentials.ToArray(), flows.ToArray(), inputs.ToArray(), first, PathBatchFactory.For<TLaw>()));
        return new(_paths.Count - 1, first);
    }

    /// <summary>Compiles what was added. The builder may be used further; the topology does not change.</summary>
    public Topology Build() => Compiler.Compile(_stores, _paths, [.. _parameters], [.. _start], [.. _spans], [.. _inputs]);

    private StoreHandle Add<TStore>(string name, ReadOnlySpan<double> parameters, ReadOnlySpan<double> start, ReadOnlySpan<double> spans, bool boundary)
        where TStore : struct, IStore
    {
        Require(parameters.Length == TStore.Parameters, name, "parameters", TStore.Parameters, parameters.Length);
        Require(start.Length == TStore.Amounts, name, "amounts", TStore.Amounts, start.Length);
        Require(spans.Length == TStore.Amounts, name, "spans", TStore.Amounts, spans.Length);
        int firstAmount = _start.Count;
        int firstParameter = _parameters.Count;
        _parameters.AddRange(parameters);
        _start.AddRange(start);
        _spans.AddRange(spans);
        _stores.Add(new(name, firstAmount, TStore.Amounts, boundary, firstParameter, StoreBatchFactory.For<TStore>()));
        return new(new(firstAmount), TStore.Amounts, firstParameter);
    }

    private static void Require(bool good, string name, string what, int wanted, int given)
    {
        if (!good)
        {
            throw new ArgumentException(FormattableString.Invariant($"'{name}' wants {wanted} {what}, not {given}."));
        }
    }
}
