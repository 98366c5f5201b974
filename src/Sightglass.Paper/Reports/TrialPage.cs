using System.Globalization;
using System.Net;
using System.Text;
using Sightglass.Basics.Language;
using Sightglass.Cards.Tree;
using Sightglass.Drawing.Look;
using Sightglass.Paper.Papers;
using Sightglass.Trials.Missteps;
using Sightglass.Trials.Results;
using Sightglass.Trials.Tries;
using Sightglass.World.Journal;
using Sightglass.World.Runs;
using Sightglass.World.Situations;

namespace Sightglass.Paper.Reports;

/// <summary>A trial as one page that stands alone: verdict first, then the text, where it fails, how, and what happened.</summary>
public static class TrialPage
{
    private const int MostWordsOfAnAxis = 8;

    private const string OwnStyle = """
        main{max-width:1180px;width:100%;margin:0 auto;padding:32px var(--margin) 64px}
        h1{font:400 var(--t-plate)/1.12 var(--serif);max-width:26ch}h1 b{font-weight:600}
        h2{font:400 var(--t-title)/1.25 var(--serif);border-top:1px solid var(--ink);padding-top:10px;margin-bottom:12px}
        .lead{font:400 var(--t-lead)/1.55 var(--serif);max-width:58ch}
        .two{display:grid;grid-template-columns:minmax(0,1fr) minmax(0,1fr);gap:48px;margin-bottom:48px}
        @media(max-width:860px){.two{grid-template-columns:1fr}}
        .steps li{display:grid;grid-template-columns:132px 1fr;gap:20px;padding:9px 0;border-bottom:1px solid var(--hair)}
        .steps .line>span:last-child{padding-left:24px}
        .cost{font:400 var(--t-label)/1.35 var(--sans);color:var(--ink2);text-align:right}
        .track{height:4px;background:var(--desk);margin:3px 0}.track i{display:block;height:4px;background:var(--ink);margin-left:auto}
        .needed .track i{background:var(--bad)}.needed .cost b{color:var(--bad)}
        .top{display:grid;grid-template-columns:minmax(0,1fr) 300px;gap:48px;align-items:end;margin-bottom:40px}.top .lead{margin:12px 0 0}
        .chart{width:100%;height:auto;max-width:560px}.map h3{margin-top:20px}.times{margin-top:48px}.times .chart{max-width:420px}.times h3,.map h3{font:600 var(--t-ui)/1.4 var(--sans)}
        .failure{display:grid;grid-template-columns:84px minmax(0,1fr);gap:8px 20px;padding:18px 0;border-bottom:1px solid var(--hair);break-inside:avoid}
        .failure>b{font:500 var(--t-number)/1 var(--sans)}.failure>b i{font:400 var(--t-ui)/1 var(--sans);color:var(--bad);margin-left:8px}.failure h3{font:600 1.0625rem/1.4 var(--serif)}
        @media(max-width:860px){.top{grid-template-columns:1fr;gap:20px}.steps li{grid-template-columns:96px 1fr}.failure{grid-template-columns:1fr}}
        .story{font:400 var(--t-ui)/1.5 var(--sans);margin-top:8px}.story td{padding:1px 14px 1px 0;vertical-align:top}
        .story .called{padding-left:24px}
        .truth{color:var(--truth)}
        .steps.plain li{grid-template-columns:1fr}.top .chart{max-width:300px}
        .situation+.situation{margin-top:72px;border-top:1.5px solid var(--ink);padding-top:28px;break-before:page}
        @page{margin:14mm}
        @media print{html{font-size:13px}main{padding:8px 0 0;max-width:none}h2{break-after:avoid}.steps li,.chart{break-inside:avoid}.two{margin-bottom:28px}.top{grid-template-columns:minmax(0,1fr) 240px;margin-bottom:24px}.failure{grid-template-columns:64px minmax(0,1fr)}.head{padding-left:0;padding-right:0}.chart{max-width:460px}.times .chart{max-width:340px}}
        """;

    /// <param name="results">Of one card, at least one; of several situations one after the other.</param>
    public static string Write(IReadOnlyList<TryResult> results)
    {
        ArgumentNullException.ThrowIfNull(results);
        StringBuilder page = new();
        string title = results[0].Request.Card.Title;
        page.Append("<!DOCTYPE html><html lang=\"").Append(Tongue.Spoken.Code).Append("\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">");
        page.Append("<title>").Append(WebUtility.HtmlEncode(Say.With($"Trial of \u201c{title}\u201d"))).Append("</title><style>").Append(LookStyle.ReportCss).Append(OwnStyle).Append("</style></head><body>");
        page.Append("<header class=\"head\"><span class=\"mark\">Sightglass</span><nav></nav><span class=\"where\">").Append(WebUtility.HtmlEncode(Where(results[0].Trial))).Append("</span></header><main>");
        foreach (TryResult findings in results)
        {
            page.Append("<section class=\"situation\">");
            Situation(page, findings);
            page.Append("</section>");
        }

        page.Append("</main><footer class=\"foot\"><span class=\"keys\"></span><span>").Append(WebUtility.HtmlEncode(Say.Book(results[0].Trial.Setup.Book.Notice)));
        page.Append(' ').Append(WebUtility.HtmlEncode(Say.It("Training aid."))).Append("</span></footer></body></html>");
        return page.ToString();
    }

    private static void Situation(StringBuilder page, TryResult findings)
    {
        page.Append("<p class=\"eyebrow\">").Append(WebUtility.HtmlEncode(Say.With($"Trial of \u201c{findings.Request.Card.Title}\u201d in \u201c{findings.Trial.Setup.Situation.Name}\u201d"))).Append("</p>");
        page.Append("<div class=\"top\"><div><h1>").Append(TrialWords.Verdict(findings.Trial)).Append("</h1><p class=\"lead\">").Append(WebUtility.HtmlEncode(TrialWords.Counts(findings.Trial)));
        page.Append("</p></div>").Append(TrialCharts.Bound(findings.Trial)).Append("</div>");
        page.Append("<div class=\"two\"><section><h2>").Append(findings.LeftOut.IsEmpty ? Say.It("The text") : Say.It("The text, and what leaving out costs")).Append("</h2>");
        Steps(page, findings);
        page.Append("</section><section class=\"map\"><h2>").Append(Say.It("Where it fails")).Append("</h2>");
        Map(page, findings);
        page.Append("</section></div>");
        Failures(page, findings);
        Times(page, findings);
    }

    private static string Where(TrialResult result) =>
        Say.With($"{result.Setup.Book.Title}{TriedWords.OnNumbers(result)}, edition {result.Setup.Book.Edition}, seed {result.Seed}");

    private static void Steps(StringBuilder page, TryResult findings)
    {
        page.Append(findings.LeftOut.IsEmpty ? "<ol class=\"steps plain\">" : "<ol class=\"steps\">");
        (int number, int line) = (0, 0);
        foreach (CardElement element in findings.Request.Card.Elements)
        {
            if (element is CardElement.Notice notice)
            {
                page.Append(findings.LeftOut.IsEmpty ? "<li>" : "<li><span></span>").Append("<span class=\"small\">").Append(WebUtility.HtmlEncode(notice.Span.Text.Trim())).Append("</span></li>");
            }
            else if (element is CardElement.Step step)
            {
                (number, line) = (step.Number, 0);
                Step(page, findings, number, line, step.Span.Text.Trim());
            }
            else if (element is CardElement.ListItem item)
            {
                Step(page, findings, number, ++line, item.Span.Text.Trim());
            }
        }

        page.Append("</ol>");
    }

    /// <summary>A step, or a line of its list (from 1).</summary>
    private static void Step(StringBuilder page, TryResult findings, int number, int line, string text)
    {
        LeftOutResult? cost = findings.LeftOut.FirstOrDefault(r => r.Step == number && r.Line == line);
        double share = cost is { Applicable: > 0 } ? (cost.Bad + cost.Stops) / (double)cost.Applicable : 0;
        bool critical = cost is { Matters: true } && share > 0.5;
        string style = $"{(line > 0 ? "line " : "")}{(critical ? "needed" : "")}".Trim();
        page.Append(style.Length == 0 ? "<li>" : $"<li class=\"{style}\">");
        page.Append(findings.LeftOut.IsEmpty ? "" : $"<span class=\"cost\">{(cost is null ? "" : Cost(cost, share))}</span>").Append("<span>").Append(WebUtility.HtmlEncode(text)).Append("</span></li>");
    }

    private static string Cost(LeftOutResult cost, double share) => !cost.Matters
        ? Say.It("left out: no worse")
        : string.Create(CultureInfo.InvariantCulture, $"<b>{Counted(cost, share)}</b><span class=\"track\"><i style=\"width:{100 * share:0}%\"></i></span><i>{WebUtility.HtmlEncode(WhatHappens(cost))}</i>");

    private static string Counted(LeftOutResult cost, double share) => share > 0.5
        ? Say.With($"critical, {cost.Bad + cost.Stops} of {cost.Applicable}")
        : Say.With($"{cost.Bad + cost.Stops} of {cost.Applicable}");

    private static string WhatHappens(LeftOutResult cost) =>
        cost.Stops == 0 ? new MechanismWords(cost.Mechanism).ToString()
        : cost.Bad > cost.BadWithIt ? Say.With($"{new MechanismWords(cost.Mechanism)}; {cost.Stops} only stop")
        : Say.It("stops, not done");

    private static void Map(StringBuilder page, TryResult findings)
    {
        DrawnRange[] axes = Axes(findings.Trial);
        if (axes.Length < 2)
        {
            page.Append("<p class=\"small\">").Append(findings.Trial.Ranking.IsEmpty ? Say.It("No case failed, or all did: nothing that is drawn tells more than another.") : Say.It("Too little is drawn for a map.")).Append("</p>");
            return;
        }

        if (TrialWords.ByNumber(findings.Trial) is { Length: > 0 } byNumber)
        {
            page.Append("<p>").Append(WebUtility.HtmlEncode(byNumber)).Append("</p>");
        }

        page.Append("<p class=\"small\">").Append(Say.It("By the two that tell most. A point ended well, a ring stopped safely, the other marks failed.")).Append("</p>").Append(TrialCharts.Map(findings.Trial, axes[0], axes[1]));
        page.Append("<h3>").Append(TrialWords.WhatTells).Append("</h3><p class=\"small\">").Append(Say.It("The share that each explains alone, less what chance would.")).Append("</p>").Append(TrialCharts.Ranking(findings.Trial));
    }

    /// <summary>The two things drawn that tell most; words go across, where there is room for them.</summary>
    private static DrawnRange[] Axes(TrialResult result)
    {
        DrawnRange[] two = [.. result.Ranking.Select(f => f.Range).Where(r => r.Words.Length <= MostWordsOfAnAxis).Take(2)];
        return two is [{ Words.IsEmpty: true }, { Words.IsEmpty: false }] ? [two[1], two[0]] : two;
    }

    private static void Times(StringBuilder page, TryResult findings)
    {
        if (findings.Trial.Done > 0)
        {
            page.Append("<section class=\"times\"><h2>").Append(Say.It("When it ends well")).Append("</h2><h3>").Append(Say.It("Time to done")).Append("</h3>").Append(TrialCharts.Times(findings.Trial)).Append("</section>");
        }
    }

    private static void Failures(StringBuilder page, TryResult findings)
    {
        if (findings.Failures.IsEmpty)
        {
            return;
        }

        page.Append("<section><h2>").Append(Say.It("How it fails")).Append("</h2>");
        foreach (FailureStory failure in findings.Failures)
        {
            page.Append("<div class=\"failure\"><b>").Append(failure.Group.Cases.Length).Append("<i>").Append(TrialCharts.Sign(findings.Trial, failure.Group.Mechanism)).Append("</i></b><div><h3>");
            page.Append(WebUtility.HtmlEncode(TrialWords.Failure(findings.Trial, failure))).Append("</h3><p class=\"small\">").Append(WebUtility.HtmlEncode(TrialWords.Departs(failure.Least))).Append("</p>").Append(TrialCharts.Line(failure)).Append("<table class=\"story\">");
            foreach (JournalEntry entry in failure.Story.Journal)
            {
                page.Append(entry.Kind == JournalKind.Truth ? "<tr class=\"truth\"><td class=\"num\">" : "<tr><td class=\"num\">");
                page.Append(TrialWords.Clock(entry.Time)).Append("</td><td>").Append(entry.Step > 0 ? entry.Step : "").Append(entry.Depth > 0 ? "</td><td class=\"called\">" : "</td><td>").Append(WebUtility.HtmlEncode(entry.Text)).Append("</td></tr>");
            }

            page.Append("</table></div></div>");
        }

        if (TrialWords.Others(findings) is { Length: > 0 } others)
        {
            page.Append("<p>").Append(WebUtility.HtmlEncode(others)).Append("</p>");
        }

        page.Append("</section>");
    }
}
