#!/usr/bin/env python3
"""Writes the .ttf files beside this one: the look's two typefaces at the weights that paper uses, as PDF wants them.

Needs python3 with fontTools and brotli. Run it again only when a font file of the look changes.
The licence (SIL Open Font License 1.1) keeps the word 'Source' for unmodified fonts, so the instances are called
Sightglass Serif and Sightglass Sans. They carry copyright and licence inside; the licence texts stand beside the look's files.
"""
import os
from fontTools.pens.recordingPen import DecomposingRecordingPen
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont
from fontTools.varLib.instancer import instantiateVariableFont

HERE = os.path.dirname(os.path.abspath(__file__))
LOOK = os.path.join(HERE, "..", "..", "Sightglass.Drawing", "Look", "fonts")
SANS, SERIF = "sofia-sans-semi-condensed-latin-wght-normal", "source-serif-4-latin-opsz-normal"
FACES = [  # face, family, file, axes: optical sizes for print, where text is small and titles are not
    ("Sans400", "Sightglass Sans", SANS, {"wght": 400}),
    ("Sans600", "Sightglass Sans", SANS, {"wght": 600}),
    ("Sans700", "Sightglass Sans", SANS, {"wght": 700}),
    ("Serif400", "Sightglass Serif", SERIF, {"wght": 400, "opsz": 12}),
    ("Serif600", "Sightglass Serif", SERIF, {"wght": 600, "opsz": 18}),
    ("SerifItalic400", "Sightglass Serif", "source-serif-4-latin-opsz-italic", {"wght": 400, "opsz": 18}),
]
DROPPED = ["GPOS", "GSUB", "GDEF", "BASE", "STAT", "prep", "gasp", "HVAR", "avar"]
LICENCE = "SIL Open Font License, Version 1.1, https://openfontlicense.org"


def polygons(*rings):
    pen = TTGlyphPen(None)
    for ring in rings:
        pen.moveTo(ring[0])
        for point in ring[1:]:
            pen.lineTo(point)
        pen.closePath()
    return pen.glyph()


ARROW = polygons([(60, 290), (60, 230), (620, 230), (470, 90), (520, 50), (740, 260), (520, 470), (470, 430), (620, 290)])
TICK = polygons([(60, 250), (115, 310), (250, 160), (560, 640), (630, 600), (260, 40)])


def flatten(font):
    """Draws every glyph that is put together from others by itself: where fonts are cut down to what a paper uses, parts of parts get lost."""
    glyphs = font.getGlyphSet()
    for name in font.getGlyphOrder():
        if font["glyf"][name].isComposite():
            recorded, pen = DecomposingRecordingPen(glyphs), TTGlyphPen(None)
            glyphs[name].draw(recorded)
            recorded.replay(pen)
            font["glyf"][name] = pen.glyph()


def add(font, character, glyph, advance):
    name = f"uni{ord(character):04X}"
    font["glyf"][name] = glyph
    font["hmtx"][name] = (advance, 60)
    font.setGlyphOrder(font.getGlyphOrder() if name in font.getGlyphOrder() else font.getGlyphOrder() + [name])
    for table in font["cmap"].tables:
        table.cmap[ord(character)] = name


for face, family, file, axes in FACES:
    font = instantiateVariableFont(TTFont(os.path.join(LOOK, file + ".woff2"), recalcTimestamp=False), axes)
    flatten(font)
    for tag in DROPPED:
        if tag in font:
            del font[tag]
    for character, glyph, advance in (("→", ARROW, 800), ("✓", TICK, 690)):
        if ord(character) not in font.getBestCmap():
            add(font, character, glyph, advance)
    names = font["name"]
    copyright = str(names.getDebugName(0))
    names.names = []
    for number, text in {0: copyright, 1: f"{family} {face}", 2: "Regular", 3: f"SightglassPaper-{face}", 4: f"{family} {face}", 6: f"Sightglass-{face}", 13: LICENCE}.items():
        names.setName(text, number, 3, 1, 0x409)
    font["OS/2"].fsType = 0
    font.flavor = None
    font.save(os.path.join(HERE, f"{face}.ttf"))
    print(face, os.path.getsize(os.path.join(HERE, f"{face}.ttf")))
