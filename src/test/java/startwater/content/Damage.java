package startwater.content;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damage done to a file as disks, editors, mail programs and jokers do it. The same chance does the same damage. */
public enum Damage {
    FLIP {
        @Override
        byte[] on(byte[] file, Random chance) {
            byte[] hurt = file.clone();
            for (int n = 1 + chance.nextInt(4); n > 0; n--) {
                hurt[chance.nextInt(hurt.length)] ^= (byte) (1 << chance.nextInt(8));
            }
            return hurt;
        }
    },
    CUT {
        @Override
        byte[] on(byte[] file, Random chance) {
            int from = chance.nextInt(file.length);
            return chance.nextInt(2) == 0
                    ? Arrays.copyOf(file, from)
                    : joined(file, from, file, Math.min(file.length, from + chance.nextInt(300)));
        }
    },
    TWICE {
        @Override
        byte[] on(byte[] file, Random chance) {
            List<String> lines = lines(file);
            int at = chance.nextInt(lines.size());
            lines.add(chance.nextInt(lines.size()), lines.get(at));
            return bytes(lines);
        }
    },
    DROP {
        @Override
        byte[] on(byte[] file, Random chance) {
            List<String> lines = lines(file);
            int from = chance.nextInt(lines.size());
            lines.subList(from, Math.min(lines.size(), from + 1 + chance.nextInt(4)))
                    .clear();
            return bytes(lines);
        }
    },
    SWAP {
        @Override
        byte[] on(byte[] file, Random chance) {
            List<String> lines = lines(file);
            java.util.Collections.swap(lines, chance.nextInt(lines.size()), chance.nextInt(lines.size()));
            return bytes(lines);
        }
    },
    HUGE {
        @Override
        byte[] on(byte[] file, Random chance) {
            String[] numbers = {
                "1e308",
                "1e999",
                "-1e308",
                "99999999999999999999",
                "9".repeat(5_000),
                "-1",
                "0",
                "1e-320",
                "0x7fffffff",
                "2147483648",
                "-9223372036854775809",
                ".inf",
                "-.inf",
                ".nan",
                "NaN",
                "1_000",
                "0.1.2"
            };
            return replaced(file, NUMBER, one(numbers, chance), chance);
        }
    },
    DEEP {
        @Override
        byte[] on(byte[] file, Random chance) {
            String[] opens = {"[", "{a: ", "- ", "{\"a\":", "> ", "? ", "(", "*"};
            String deep = one(opens, chance).repeat(10 + chance.nextInt(4_000));
            return replaced(file, VALUE, deep, chance);
        }
    },
    TYPE {
        @Override
        byte[] on(byte[] file, Random chance) {
            String[] others = {
                "[]",
                "{}",
                "null",
                "true",
                "~",
                "\"\"",
                "''",
                "[1, 2]",
                "{a: 1}",
                "{\"a\":1}",
                "!!binary aGk=",
                "!!java.net.URL [http://localhost]",
                "2026-01-01",
                "|",
                ">-",
                "%",
                "@",
                "text with: a colon",
                "1e",
                "- 1"
            };
            return replaced(file, VALUE, one(others, chance), chance);
        }
    },
    UNICODE {
        @Override
        byte[] on(byte[] file, Random chance) {
            String[] odd = {
                "\u202e",
                "\u2028",
                "\u0085",
                "\u00a0",
                "\ufeff",
                "\ud83d\udc1f",
                "\u0301",
                "\u200d",
                "\uffff",
                "\u0660",
                "\u2212",
                "\u00bd",
                "\ufffd"
            };
            String text = text(file);
            int at = chance.nextInt(text.length() + 1);
            return (text.substring(0, at) + one(odd, chance) + text.substring(at)).getBytes(StandardCharsets.UTF_8);
        }
    },
    BOM {
        @Override
        byte[] on(byte[] file, Random chance) {
            byte[][] marks = {{(byte) 0xef, (byte) 0xbb, (byte) 0xbf}, {(byte) 0xff, (byte) 0xfe}, {0, 0}};
            return joined(one(marks, chance), Integer.MAX_VALUE, file, 0);
        }
    },
    ENDS {
        @Override
        byte[] on(byte[] file, Random chance) {
            String[] ends = {"\r\n", "\r", "\u2028", "\n\n", " \n", "\t\n"};
            return text(file).replace("\n", one(ends, chance)).getBytes(StandardCharsets.UTF_8);
        }
    },
    NUL {
        @Override
        byte[] on(byte[] file, Random chance) {
            int at = chance.nextInt(file.length + 1);
            // A file whose blocks were never written is full of them.
            byte[] nothing = new byte[chance.nextInt(2) == 0 ? 1 : 512];
            return joined(joined(file, at, nothing, 0), at + nothing.length, file, at);
        }
    },
    BOMB {
        @Override
        byte[] on(byte[] file, Random chance) {
            StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
            for (int i = 1; i < 40; i++) {
                bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
            }
            List<String> lines = lines(file);
            lines.add(chance.nextInt(lines.size() + 1), bomb.toString());
            return bytes(lines);
        }
    },
    KEY {
        @Override
        byte[] on(byte[] file, Random chance) {
            String[] names = {"id", "kind", "a b", "<<", "__proto__", "", "format", "attempt", "x".repeat(300)};
            return replaced(file, NAME, one(names, chance), chance);
        }
    },
    SPICE {
        @Override
        byte[] on(byte[] file, Random chance) {
            String spice = "{}[]:,&*!|>'\"%@`#-?~\\ \t\n0123456789.eE/";
            StringBuilder text = new StringBuilder(text(file));
            for (int n = 1 + chance.nextInt(6); n > 0; n--) {
                text.insert(chance.nextInt(text.length() + 1), spice.charAt(chance.nextInt(spice.length())));
            }
            return text.toString().getBytes(StandardCharsets.UTF_8);
        }
    };

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?([eE]-?\\d+)?");
    private static final Pattern VALUE = Pattern.compile("(?<=: )\\S[^\\n,}]*|(?<=\":)[^,}\\]]+");
    private static final Pattern NAME = Pattern.compile("(?m)(?<=^ {0,12})\\w+(?=:)|(?<=\")\\w+(?=\":)");

    abstract byte[] on(byte[] file, Random chance);

    /** A file with one to three of all kinds of damage. */
    public static byte[] any(byte[] file, Random chance) {
        byte[] hurt = file;
        for (int n = 1 + chance.nextInt(3); n > 0 && hurt.length > 0; n--) {
            hurt = one(values(), chance).on(hurt, chance);
        }
        return hurt;
    }

    private static byte[] joined(byte[] first, int until, byte[] second, int from) {
        int head = Math.min(until, first.length);
        byte[] all = Arrays.copyOf(first, head + second.length - from);
        System.arraycopy(second, from, all, head, second.length - from);
        return all;
    }

    private static <T> T one(T[] of, Random chance) {
        return of[chance.nextInt(of.length)];
    }

    /** One of the places, drawn by chance, with something else in it. */
    private static byte[] replaced(byte[] file, Pattern place, String by, Random chance) {
        String text = text(file);
        Matcher m = place.matcher(text);
        List<int[]> places = new ArrayList<>();
        while (m.find()) {
            places.add(new int[] {m.start(), m.end()});
        }
        if (places.isEmpty()) {
            return file;
        }
        int[] at = places.get(chance.nextInt(places.size()));
        return (text.substring(0, at[0]) + by + text.substring(at[1])).getBytes(StandardCharsets.UTF_8);
    }

    private static List<String> lines(byte[] file) {
        return new ArrayList<>(Arrays.asList(text(file).split("\n", -1)));
    }

    private static byte[] bytes(List<String> lines) {
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    private static String text(byte[] file) {
        return new String(file, StandardCharsets.UTF_8);
    }
}
