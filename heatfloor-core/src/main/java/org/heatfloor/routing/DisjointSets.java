package org.heatfloor.routing;

import java.util.Arrays;

/**
 * The numbers from 0 on in sets that are joined, the smaller to the larger (B. Galler, M. Fischer, An improved equivalence
 * algorithm, Communications of the ACM 7 (1964); from memory).
 */
final class DisjointSets {

    private final int[] parents;
    private final int[] sizes;
    private int count;

    DisjointSets(int numbers) {
        parents = new int[numbers];
        sizes = new int[numbers];
        split();
    }

    /** Puts every number into a set of its own again. */
    void split() {
        for (int n = 0; n < parents.length; n++) {
            parents[n] = n;
        }
        Arrays.fill(sizes, 1);
        count = parents.length;
    }

    /** How many sets there are. */
    int count() {
        return count;
    }

    /** The number that stands for a number's set. */
    private int root(int number) {
        int root = number;
        while (parents[root] != root) {
            parents[root] = parents[parents[root]];
            root = parents[root];
        }
        return root;
    }

    /** How many numbers are in a number's set. */
    int size(int number) {
        return sizes[root(number)];
    }

    /** Whether two numbers are in one set. */
    boolean together(int a, int b) {
        return root(a) == root(b);
    }

    /** Joins the sets of two numbers. */
    void join(int a, int b) {
        int large = root(a);
        int small = root(b);
        if (large == small) {
            return;
        }
        if (sizes[large] < sizes[small]) {
            int swapped = large;
            large = small;
            small = swapped;
        }
        parents[small] = large;
        sizes[large] += sizes[small];
        count--;
    }
}
