using Sightglass.Network.Step;

namespace Sightglass.Network.Compile;

/// <summary>Turns the rows of a builder into index streams.</summary>
internal static class Compiler
{
    public static Topology Compile(List<StoreRow> stores, List<PathRow> paths, double[] parameters, double[] start, double[] spans, double[] inputs)
    {
        int n = start.Length;
        bool[] boundary = new bool[n];
        HashSet<int>[] coupled = [.. Enumerable.Range(0, n).Select(i => new HashSet<int> { i })];
        foreach (StoreRow s in stores)
        {
            for (int i = 0; i < s.Count; i++)
            {
                boundary[s.FirstAmount + i] = s.IsBoundary;
                for (int j = 0; j < s.Count && !s.IsBoundary; j++)
                {
                    coupled[s.FirstAmount + i].Add(s.FirstAmount + j);
                }
            }
        }

        foreach (PathRow path in paths)
        {
            foreach (int row in path.Flows.SelectMany(f => new[] { f.From, f.To }).Where(a => !a.IsNone).Select(a => a.Index))
            {
                coupled[row].UnionWith(path.Potentials.Select(p => p.Index).Where(p => !boundary[p]));
            }
        }

        int[] order = EliminationOrder.MinimumDegree(coupled, boundary);
        int[] rowOf = new int[n];
        for (int k = 0; k < n; k++)
        {
            rowOf[order[k]] = k;
        }

        FactorPlan plan = new([.. order.Select(a => new SortedSet<int>(coupled[a].Select(b => rowOf[b])))]);
        (StoreBatch[] storeBatches, StoreIndex[] doubles) = Stores(stores, rowOf);
        (PathBatch[] pathBatches, (int Batch, int Index)[] pathPlaces) = Paths(paths, rowOf, boundary, plan);
        return new Topology(plan)
        {
            Amounts = n,
            RowOf = rowOf,
            NameOfRow = Names(stores, rowOf),
            StoreBatches = storeBatches,
            PathBatches = pathBatches,
            PathPlaces = pathPlaces,
            CrossPlaces = [.. doubles.Select(d => (d.Row, d.SecondRow, boundary[order[d.Row]] ? -1 : plan.PlaceOf(d.Row, d.SecondRow), boundary[order[d.Row]] ? -1 : plan.PlaceOf(d.SecondRow, d.Row)))],
            Spans = [.. order.Select(a => boundary[a] ? 0 : spans[a])],
            StartParameters = parameters,
            StartAmounts = [.. order.Select(a => start[a])],
            StartInputs = inputs,
        };
    }

    private static string[] Names(List<StoreRow> stores, int[] rowOf)
    {
        string[] names = new string[rowOf.Length];
        foreach (StoreRow s in stores)
        {
            for (int i = 0; i < s.Count; i++)
            {
                names[rowOf[s.FirstAmount + i]] = s.Name;
            }
        }

        return names;
    }

    private static (StoreBatch[] Batches, StoreIndex[] Doubles) Stores(List<StoreRow> stores, int[] rowOf)
    {
        List<StoreBatch> batches = [];
        List<StoreIndex> doubles = [];
        foreach (IGrouping<StoreBatchFactory, StoreRow> group in stores.GroupBy(s => s.Factory))
        {
            List<StoreIndex> rows = [];
            foreach (StoreRow s in group)
            {
                bool two = s.Count > 1;
                StoreIndex index = new(rowOf[s.FirstAmount], two ? rowOf[s.FirstAmount + 1] : -1, s.FirstParameter, two ? 2 * doubles.Count : -1);
                rows.Add(index);
                if (two)
                {
                    doubles.Add(index);
                }
            }

            batches.Add(group.Key.Create([.. rows]));
        }

        return ([.. batches], [.. doubles]);
    }

    private static (PathBatch[] Batches, (int Batch, int Index)[] Places) Paths(List<PathRow> paths, int[] rowOf, bool[] boundary, FactorPlan plan)
    {
        List<PathBatch> batches = [];
        (int, int)[] places = new (int, int)[paths.Count];
        foreach (IGrouping<PathBatchFactory, (PathRow Path, int Number)> group in paths.Select((p, i) => (p, i)).GroupBy(p => p.p.Factory))
        {
            (PathRow Path, int Number)[] members = [.. group];
            for (int i = 0; i < members.Length; i++)
            {
                places[members[i].Number] = (batches.Count, i);
            }

            batches.Add(group.Key.Create(new(
                members.Length,
                [.. members.SelectMany(m => m.Path.Potentials.Select(p => rowOf[p.Index]))],
                [.. members.SelectMany(m => m.Path.Inputs.Select(u => u.Index))],
                [.. members.Select(m => m.Path.FirstParameter)],
                [.. members.SelectMany(m => m.Path.Flows.SelectMany(f => new[] { RowOrDummy(f.From), RowOrDummy(f.To) }))],
                [.. members.SelectMany(m => Stamps(m.Path))])));
        }

        return ([.. batches], places);

        int RowOrDummy(Amount a) => a.IsNone ? plan.Size : rowOf[a.Index];

        IEnumerable<int> Stamps(PathRow path) =>
            from flow in path.Flows
            from p in path.Potentials
            from row in new[] { flow.From, flow.To }
            select row.IsNone || boundary[p.Index] ? plan.Values : plan.PlaceOf(rowOf[row.Index], rowOf[p.Index]);
    }
}
