using Sightglass.Book.Yaml;

namespace Sightglass.Book.Assemblies;

/// <summary>How much may still be written out: a few lines of nested assemblies could ask for a machine's whole memory.</summary>
internal sealed class ExpansionBudget(YamlLimits limits, int times)
{
    private long _nodes = (long)limits.Nodes * times;
    private long _characters = limits.TotalBytes;

    public bool IsSpent => _nodes < 0 || _characters < 0;

    public YamlLimits Limits => limits;

    public bool Take(int nodes) => (_nodes -= nodes) >= 0;

    public bool TakeText(int characters) => (_characters -= characters) >= 0;
}
