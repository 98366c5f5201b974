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
        SumPlan rowSums = new(n);
        SumPlan placeSums = new(plan.Values);
        (StoreBatch[] storeBatches, StoreIndex[] doubles) = Stores(stores, rowOf);
        (PathBatch[] pathBatches, (int Batch, int Index)[] pathPlaces, int flows, int slopes) = Paths(paths, rowOf, boundary, plan, rowSums, placeSums);
        foreach ((StoreIndex d, int i) in doubles.Select((d, i) => (d, i)).Where(d => !boundary[order[d.d.Row]]))
        {
            placeSums.Add(plan.PlaceOf(d.Row, d.SecondRow), slopes + (2 * i));
            placeSums.Add(plan.PlaceOf(d.SecondRow, d.Row), slopes + (2 * i) + 1);
        }

        return new Topology(plan)
        {
            Amounts = n,
            RowOf = rowOf,
            NameOfRow = Names(stores, rowOf),
            StoreBatches = storeBatches,
            PathBatches = pathBatches,
            PathPlaces = pathPlaces,
            Flows = flows,
            Slopes = slopes,
            RowSums = rowSums.ToStream(),
            PlaceSums = placeSums.ToStream(),
            Pairs = [.. doubles.Select(d => (d.Row, d.SecondRow))],
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

    /// <summary>The batches, where each path stands in them, how many flows and slopes there are; fills in what rows and places are sums of.</summary>
    private static (PathBatch[] Batches, (int Batch, int Index)[] Places, int Flows, int Slopes) Paths(
        List<PathRow> paths, int[] rowOf, bool[] boundary, FactorPlan plan, SumPlan rowSums, SumPlan placeSums)
    {
        List<PathBatch> batches = [];
        (int, int)[] places = new (int, int)[paths.Count];
        int flows = 0;
        int slopes = 0;
        foreach (IGrouping<PathBatchFactory, (PathRow Path, int Number)> group in paths.Select((p, i) => (p, i)).GroupBy(p => p.p.Factory))
        {
            (PathRow Path, int Number)[] members = [.. group];
            batches.Add(group.Key.Create(new(
                members.Length,
                new(members.SelectMany(m => m.Path.Potentials.Select(p => rowOf[p.Index]))),
                new(members.SelectMany(m => m.Path.Inputs.Select(u => u.Index))),
                new(members.Select(m => m.Path.FirstParameter)),
                flows,
                slopes)));
            for (int i = 0; i < members.Length; i++)
            {
                places[members[i].Number] = (batches.Count - 1, i);
                foreach (Flow flow in members[i].Path.Flows)
                {
                    SumUp(flow, members[i].Path.Potentials);
                }
            }
        }

        return ([.. batches], places, flows, slopes);

        void SumUp(Flow flow, Amount[] potentials)
        {
            int from = flow.From.IsNone ? -1 : rowOf[flow.From.Index];
            int to = flow.To.IsNone ? -1 : rowOf[flow.To.Index];
            if (from >= 0) rowSums.Take(from, flows);
            if (to >= 0) rowSums.Add(to, flows);
            flows++;
            foreach (Amount p in potentials)
            {
                if (from >= 0 && !boundary[p.Index]) placeSums.Add(plan.PlaceOf(from, rowOf[p.Index]), slopes);
                if (to >= 0 && !boundary[p.Index]) placeSums.Take(plan.PlaceOf(to, rowOf[p.Index]), slopes);
                slopes++;
            }
        }
    }
}
