using Sightglass.Network.Step;
using Sightglass.Network.Stores;

namespace Sightglass.Network.Compile;

/// <summary>Makes the batch for all stores of one type: the only place where the type is known.</summary>
internal abstract class StoreBatchFactory
{
    public abstract StoreBatch Create(StoreIndex[] rows);

    public static StoreBatchFactory For<TStore>()
        where TStore : struct, IStore => Typed<TStore>.s_instance;

    private sealed class Typed<TStore> : StoreBatchFactory
        where TStore : struct, IStore
    {
        public static readonly Typed<TStore> s_instance = new();

        public override StoreBatch Create(StoreIndex[] rows) => new StoreBatch<TStore>(rows);
    }
}
