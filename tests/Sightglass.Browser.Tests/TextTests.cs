using Microsoft.Playwright;

namespace Sightglass.Browser.Tests;

/// <summary>What is written on a page can be read: nothing is cut off, nothing lies over something else, nothing sticks out of its button, and no letter is smaller than the least.</summary>
public sealed class TextTests(Site site) : IClassFixture<Site>
{
    private static readonly string[] s_pages =
    [
        "/walk", "/machine?system=fuel", "/machine?system=brake air", "/machine?system=head-end control", "/machine?system=battery and low voltage", "/machine?system=engine equipment", "/machine?system=communication",
        "/machine?system=cooling water", "/machine?system=trucks", "/bets", "/papers", "/notes", "/proposals", "/rules", "/calculators", "/calculators/tractive-effort", "/trials", "/trials/empty-a-leaking-compartment-draft",
        "/recordings", "/recordings/stopped on the grade", "/recordings/map/file?of=recordings/stopped-on-the-grade.csv", "/searches", "/routes", "/routes/Saltmarsh to Windlass", "/trains", "/room", "/drill", "/nowhere",
    ];

    /// <summary>
    /// Every line of text with the part of it that is seen; lettering painted on the machine is a drawing, and what is hidden from eyes is for readers. Lines that share some height and width lie over each other:
    /// a fifth of each line's height is the room of its own letters. Least letters: 12 px, those of keys.
    /// </summary>
    private const string Look = """
        () => {
          const found = [], lines = [];
          const style = new Map(), of = e => style.get(e) ?? style.set(e, getComputedStyle(e)).get(e);
          const seen = e => e.checkVisibility({ contentVisibilityAuto: true, opacityProperty: true, visibilityProperty: true }) && !e.closest('.vh,.skip,title,desc,script,style,option,datalist,.letter');
          const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walk.nextNode()) {
            const text = walk.currentNode, parent = text.parentElement;
            if (!text.data.trim() || !seen(parent)) continue;
            const range = document.createRange();
            range.selectNodeContents(text);
            for (const r of range.getClientRects()) {
              if (r.width < 2 || r.height < 2) continue;
              const line = { text: text.data.trim().slice(0, 40), left: r.left, right: r.right, top: r.top + r.height / 5, bottom: r.bottom - r.height / 5, isFixed: false };
              for (let e = parent; e && e !== document.body; e = e.parentElement) {
                const s = of(e), b = e.getBoundingClientRect(), cuts = v => v === 'hidden' || v === 'clip';
                line.isFixed ||= s.position === 'fixed' || s.position === 'sticky';
                if (cuts(s.overflowX) && e.tagName !== 'svg' && b.width > 2 && r.right > b.left && r.left < b.right && (r.right > b.right + 1.5 || r.left < b.left - 1.5)) found.push(`cut off: ${line.text}`);
                if (s.overflowX !== 'visible') { line.left = Math.max(line.left, b.left); line.right = Math.min(line.right, b.right); }
                if (s.overflowY !== 'visible') { line.top = Math.max(line.top, b.top); line.bottom = Math.min(line.bottom, b.bottom); }
              }
              if (line.right > line.left && line.bottom > line.top) lines.push(line);
            }
            const scale = parent.getScreenCTM ? Math.hypot(parent.getScreenCTM().a, parent.getScreenCTM().b) : 1;
            const size = parseFloat(of(parent).fontSize) * scale;
            if (size > 0 && size < 11.9) found.push(`letters of ${size.toFixed(1)} px: ${text.data.trim().slice(0, 40)}`);
          }
          lines.sort((a, b) => a.top - b.top);
          for (let i = 0; i < lines.length; i++)
            for (let j = i + 1; j < lines.length && lines[j].top < lines[i].bottom; j++) {
              const [a, b] = [lines[i], lines[j]];
              if (!a.isFixed && !b.isFixed && Math.min(a.right, b.right) - Math.max(a.left, b.left) > 2 && Math.min(a.bottom, b.bottom) - b.top > 1.5) found.push(`over each other: ${a.text} | ${b.text}`);
            }
          for (const e of document.querySelectorAll('button,.btn')) if (seen(e) && e.clientWidth > 0 && e.scrollWidth > e.clientWidth + 1) found.push(`sticks out of its button: ${e.textContent.trim()}`);
          if (document.documentElement.scrollWidth > innerWidth + 1) found.push(`the page is ${document.documentElement.scrollWidth} px wide`);
          return [...new Set(found)].slice(0, 6).join('; ');
        }
        """;

    /// <summary>Common practice, no source: a text that is cut or covered is not read.</summary>
    [Theory]
    [InlineData(1440, "en")]
    [InlineData(1440, "es")]
    [InlineData(390, "en")]
    [InlineData(390, "es")]
    public async Task Pages_LookedAtForTheirText_AllOfItCanBeRead(int width, string language)
    {
        IPage page = await site.Open($"/?language={language}", width);
        List<string> wrong = [];
        foreach (string path in s_pages)
        {
            await page.GotoAsync(site.Address + path);
            await page.EvaluateAsync("() => document.fonts.ready.then(() => true)");
            string found = await page.EvaluateAsync<string>(Look);
            if (found.Length > 0)
            {
                wrong.Add($"{path}: {found}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
    }
}
