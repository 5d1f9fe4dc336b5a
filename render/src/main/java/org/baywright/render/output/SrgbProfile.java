package org.baywright.render.output;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The sRGB colour space as an ICC profile of our own: three colourants and one tone curve. Made from the published
 * figures, so that no profile with terms of its own has to be shipped.
 *
 * <p>@source ICC.1:2001-04 (profile version 2.4: header, tag table, desc, cprt, XYZ and curv types; from memory, checked
 * by the tests against the JDK's reader); IEC 61966-2-1 (tone curve); colourants adapted from D65 to D50 with the
 * Bradford matrix, the figures common to published sRGB profiles (from memory)
 */
final class SrgbProfile {
    static final String NAME = "sRGB IEC61966-2.1";
    static final int CHANNELS = 3;

    private static final int HEADER = 128;
    private static final int CURVE_POINTS = 1024;
    private static final int VERSION = 0x02400000;

    /** The profile connection space's white, D50. */
    private static final double[] WHITE = {0.9642, 1.0, 0.8249};

    private static final double[] RED = {0.43607, 0.22249, 0.01392};
    private static final double[] GREEN = {0.38515, 0.71687, 0.09708};
    private static final double[] BLUE = {0.14307, 0.06061, 0.71410};

    private SrgbProfile() {}

    /** The profile, as a file would hold it. */
    static byte[] bytes() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", description());
        tags.put("cprt", typed("text", ascii("No copyright, use freely\0")));
        tags.put("wtpt", xyz(WHITE));
        tags.put("rXYZ", xyz(RED));
        tags.put("gXYZ", xyz(GREEN));
        tags.put("bXYZ", xyz(BLUE));
        byte[] curve = curve();
        tags.put("rTRC", curve);
        tags.put("gTRC", curve);
        tags.put("bTRC", curve);
        return assembled(tags);
    }

    /** Header, table of tags, then their data; tags with the same data share it. */
    private static byte[] assembled(Map<String, byte[]> tags) {
        int dataStart = HEADER + 4 + 12 * tags.size();
        ByteBuffer table = ByteBuffer.allocate(dataStart - HEADER).putInt(tags.size());
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        Map<byte[], Integer> offsets = new IdentityHashMap<>();
        tags.forEach((name, content) -> {
            int offset = offsets.computeIfAbsent(content, c -> appended(c, data) + dataStart);
            table.put(ascii(name)).putInt(offset).putInt(content.length);
        });
        int size = dataStart + data.size();
        return ByteBuffer.allocate(size)
                .put(header(size))
                .put(table.array())
                .put(data.toByteArray())
                .array();
    }

    /** Appends content, padded to four bytes, and says where it starts. */
    private static int appended(byte[] content, ByteArrayOutputStream data) {
        int offset = data.size();
        data.writeBytes(content);
        data.writeBytes(new byte[(4 - content.length % 4) % 4]);
        return offset;
    }

    private static byte[] header(int size) {
        ByteBuffer header = ByteBuffer.allocate(HEADER).putInt(size).putInt(0).putInt(VERSION);
        header.put(ascii("mntrRGB XYZ "));
        header.putShort((short) 2000).putShort((short) 1).putShort((short) 1);
        header.position(36).put(ascii("acsp"));
        header.position(68);
        fixed(header, WHITE);
        return header.array();
    }

    private static byte[] description() {
        byte[] name = ascii(NAME + "\0");
        int unicodeAndScript = 4 + 4 + 2 + 1 + 67;
        ByteBuffer content = ByteBuffer.allocate(4 + name.length + unicodeAndScript);
        return typed("desc", content.putInt(name.length).put(name).array());
    }

    private static byte[] xyz(double[] values) {
        ByteBuffer content = ByteBuffer.allocate(12);
        fixed(content, values);
        return typed("XYZ ", content.array());
    }

    private static byte[] curve() {
        ByteBuffer content = ByteBuffer.allocate(4 + 2 * CURVE_POINTS).putInt(CURVE_POINTS);
        for (int i = 0; i < CURVE_POINTS; i++) {
            double light = light(i / (CURVE_POINTS - 1.0));
            content.putShort((short) Math.round(light * 0xFFFF));
        }
        return typed("curv", content.array());
    }

    /** Light given off for a signal from 0 to 1. */
    private static double light(double signal) {
        return signal <= 0.04045 ? signal / 12.92 : Math.pow((signal + 0.055) / 1.055, 2.4);
    }

    /** Numbers with sixteen binary places. */
    private static void fixed(ByteBuffer into, double... values) {
        for (double value : values) {
            into.putInt((int) Math.round(value * 0x10000));
        }
    }

    private static byte[] typed(String type, byte[] content) {
        return ByteBuffer.allocate(8 + content.length)
                .put(ascii(type))
                .putInt(0)
                .put(content)
                .array();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
