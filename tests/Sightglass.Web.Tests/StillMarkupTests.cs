using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.AspNetCore.Components.Web.HtmlRendering;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;
using Sightglass.Web.Parts;

namespace Sightglass.Web.Tests;

/// <summary>A drawing on a page is the script's after it was written: the page takes nothing out of it that may not be there any more.</summary>
public sealed class StillMarkupTests
{
    /// <summary>This renderer is a browser that never says that anything stands, as a slow one does for a while.</summary>
    [Fact]
    public async Task Markup_AskedForAgainBeforeTheBrowserAnswers_StaysAsWritten()
    {
        await using ServiceProvider services = new ServiceCollection().BuildServiceProvider();
        await using HtmlRenderer renderer = new(services, NullLoggerFactory.Instance);
        await renderer.Dispatcher.InvokeAsync(async () =>
        {
            HtmlRootComponent root = await renderer.RenderComponentAsync<Asking>();
            Assert.Equal("<svg id=\"first\"></svg><i>second</i>", root.ToHtmlString());
        });
    }

    /// <summary>Writes itself twice, each time with another drawing.</summary>
    private sealed class Asking : ComponentBase
    {
        private string _word = "first";

        protected override async Task OnInitializedAsync()
        {
            await Task.Yield();
            _word = "second";
        }

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            builder.OpenComponent<StillMarkup>(0);
            builder.AddComponentParameter(1, nameof(StillMarkup.Markup), $"<svg id=\"{_word}\"></svg>");
            builder.CloseComponent();
            builder.OpenElement(2, "i");
            builder.AddContent(3, _word);
            builder.CloseElement();
        }
    }
}
