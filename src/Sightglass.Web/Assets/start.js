// A link followed before the connection stands loads its page whole: patched into this one, it would be drawn over by the page that the connection was asked for.
Blazor.start({ ssr: { disableDomPreservation: true } });
