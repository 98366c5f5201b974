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
                for (int j = 0; j < s.Count; j++)
                {
                    coupled[s.FirstAmount + i].Add(s.FirstAmount + j);
                }
            }
        }

        foreach (PathRow path in paths)
        {
            foreach (int row in path.Flows.SelectMany(f => new[] { f.From, f.To }).Where(a => !a.IsNone && !boundary[a.Index]).Select(a => a.Index))
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

        FactorPlan plan = new([.. order.Where(a => !boundary[a]).Select(a => coupled[a].Select(b => rowOf[b]))]);
        Sums sums = new(plan, n);
        (StoreBatch[] storeBatches, StoreIndex[] doubles) = Stores(stores, rowOf);
        (PathBatch[] pathBatches, (int Batch, int Index)[] pathPlaces, int flows, int slopes) = Paths(paths, rowOf, sums);
        foreach (StoreIndex d in doubles)
        {
            sums.Places.Add(plan.PlaceOf(d.Row, d.SecondRow), slopes + d.Cross);
            sums.Places.Add(plan.PlaceOf(d.SecondRow, d.Row), slopes + d.Cross + 1);
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
            RowSums = sums.Rows.ToStream(),
            PlaceSums = sums.Places.ToStream(),
            BoundarySums = sums.Boundaries.ToStream(),
            BoundaryProducts = sums.Products.ToStream(),
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

    /// <summary>The batches, and the stores with two amounts that are not boundaries. What capacities across a boundary says goes behind those of the others, where nobody reads.</summary>
    private static (StoreBatch[] Batches, StoreIndex[] Doubles) Stores(List<StoreRow> stores, int[] rowOf)
    {
        List<StoreBatch> batches = [];
        List<StoreIndex> doubles = [];
        int across = 2 * stores.Count(s => s.Count > 1 && !s.IsBoundary);
        foreach (IGrouping<StoreBatchFactory, StoreRow> group in stores.GroupBy(s => s.Factory))
        {
            List<StoreIndex> rows = [];
            foreach (StoreRow s in group)
            {
                bool two = s.Count > 1;
                StoreIndex index = new(rowOf[s.FirstAmount], two ? rowOf[s.FirstAmount + 1] : -1, s.FirstParameter, !two ? -1 : s.IsBoundary ? across : 2 * doubles.Count);
                rows.Add(index);
                if (two && !s.IsBoundary)
                {
                    doubles.Add(index);
                }
            }

            batches.Add(group.Key.Create([.. rows]));
        }

        return ([.. batches], [.. doubles]);
    }

    /// <summary>The batches, where each path stands in them, how many flows and slopes there are; fills in the sums.</summary>
    private static (PathBatch[] Batches, (int Batch, int Index)[] Places, int Flows, int Slopes) Paths(List<PathRow> paths, int[] rowOf, Sums sums)
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
            sums.AddFlow(from, to, flows++);
            foreach (Amount p in potentials)
            {
                sums.AddSlope(from, to, rowOf[p.Index], slopes++);
            }
        }
    }
}
