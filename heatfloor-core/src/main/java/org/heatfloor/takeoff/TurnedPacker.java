package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.heatfloor.takeoff.LevelPacker.Packing;
import org.heatfloor.takeoff.LevelPacker.Slot;
import org.heatfloor.takeoff.StripCutter.Piece;

/**
 * Packs pieces as they lie and, where that takes more than the bound, with the turnable ones a quarter turn round in every
 * combination. Round studs on a square lattice stay in phase.
 */
final class TurnedPacker {

    /** More turnable pieces than this are turned all together or not at all. */
    private static final int MOST_TURNED = 6;

    private TurnedPacker() {}

    /** Lower bound over every combination. */
    static int bound(List<Piece> pieces, int stockLength, int band) {
        int[] lengths = new int[pieces.size()];
        int[] widths = new int[pieces.size()];
        for (int i = 0; i < lengths.length; i++) {
            Piece p = pieces.get(i);
            boolean turnable = p.isTurnable(band, stockLength);
            lengths[i] = turnable ? Math.min(p.length(), p.width()) : p.length();
            widths[i] = turnable ? Math.min(p.length(), p.width()) : p.width();
        }
        long area =
                pieces.stream().mapToLong(p -> (long) p.length() * p.width()).sum();
        long one = (long) stockLength * band;
        return Math.max((int) ((area + one - 1) / one), LevelPacker.bound(lengths, widths, stockLength, band));
    }

    static Packing pack(List<Piece> pieces, int stockLength, int band, Work work) {
        int bound = bound(pieces, stockLength, band);
        List<Integer> turnable = IntStream.range(0, pieces.size())
                .filter(i -> pieces.get(i).isTurnable(band, stockLength))
                .boxed()
                .toList();
        List<List<Integer>> combinations = combinations(turnable);
        Packing best = packed(
                        pieces, List.of(), stockLength, band, Integer.MAX_VALUE, work.part(combinations.size() + 1))
                .orElseThrow();
        boolean proven = best.proven();
        for (int i = 0; i < combinations.size() && best.stocks() > bound; i++) {
            if (work.isSpent()) {
                proven = false;
                break;
            }
            Optional<Packing> trial = packed(
                    pieces, combinations.get(i), stockLength, band, best.stocks(), work.part(combinations.size() - i));
            proven &= trial.map(Packing::proven).orElse(true);
            best = trial.filter(fewerThan(best)).orElse(best);
        }
        boolean all = proven && turnable.size() <= MOST_TURNED;
        return new Packing(best.stocks(), best.slots(), bound, all || best.stocks() == bound);
    }

    /** Few turned pieces first. */
    private static List<List<Integer>> combinations(List<Integer> turnable) {
        if (turnable.isEmpty()) {
            return List.of();
        }
        if (turnable.size() > MOST_TURNED) {
            return List.of(turnable);
        }
        List<List<Integer>> all = new ArrayList<>();
        for (int bits = 1; bits < (1 << turnable.size()); bits++) {
            int set = bits;
            all.add(IntStream.range(0, turnable.size())
                    .filter(i -> ((set >> i) & 1) == 1)
                    .mapToObj(turnable::get)
                    .toList());
        }
        all.sort(Comparator.comparingInt(List::size));
        return all;
    }

    private static Predicate<Packing> fewerThan(Packing best) {
        return packing -> packing.stocks() < best.stocks();
    }

    /** Packs with some pieces turned; empty where even the bound is not under {@code most}. */
    private static Optional<Packing> packed(
            List<Piece> pieces, List<Integer> turned, int stockLength, int band, int most, Work work) {
        int[] lengths = new int[pieces.size()];
        int[] widths = new int[pieces.size()];
        for (int i = 0; i < lengths.length; i++) {
            boolean isTurned = turned.contains(i);
            lengths[i] = isTurned ? pieces.get(i).width() : pieces.get(i).length();
            widths[i] = isTurned ? pieces.get(i).length() : pieces.get(i).width();
        }
        work.take((long) lengths.length * lengths.length);
        if (LevelPacker.bound(lengths, widths, stockLength, band) >= most) {
            return Optional.empty();
        }
        Packing packing = LevelPacker.pack(lengths, widths, stockLength, band, work);
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            Slot slot = packing.slots().get(i);
            slots.add(new Slot(slot.stock(), slot.along(), slot.across(), turned.contains(i)));
        }
        return Optional.of(new Packing(packing.stocks(), slots, packing.bound(), packing.proven()));
    }
}
