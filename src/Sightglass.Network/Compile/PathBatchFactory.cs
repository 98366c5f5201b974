using Sightglass.Network.Laws;
using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>Makes the batch for all paths of one law: the only place where the law's type is known.</summary>
internal abstract class PathBatchFactory
{
    public abstract PathBatch Create(PathIndex index);

    public static PathBatchFactory For<TLaw>()
        where TLaw : struct, ILaw => Typed<TLaw>.s_instance;

    private sealed class Typed<TLaw> : PathBatchFactory
        where TLaw : struct, ILaw
    {
        public static readonly Typed<TLaw> s_instance = new();

        public override PathBatch Create(PathIndex index) => new PathBatch<TLaw>(index);
    }
}
