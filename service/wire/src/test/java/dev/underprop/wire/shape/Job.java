package dev.underprop.wire.shape;

import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** A model written as the generator writes them: annotated accessors, fields that may be absent. */
class Job {
    private @Nullable String length;
    private @Nullable Integer count;
    private @Nullable Long serial;
    private @Nullable Double factor;
    private @Nullable BigDecimal weight;
    private @Nullable Boolean fastened;
    private @Nullable LocalDate day;
    private @Nullable Job inner;
    private @Nullable List<Job> parts;
    private @Nullable List<@Nullable String> names;
    private Set<String> removed = new LinkedHashSet<>();
    private Map<String, Double> limits = new LinkedHashMap<>();
    private @Nullable Object free;
    private @Nullable Side side;

    enum Side {
        LEFT,
        RIGHT
    }

    @JsonProperty("length")
    public @Nullable String getLength() {
        return length;
    }

    @JsonProperty("length")
    public void setLength(@Nullable String length) {
        this.length = length;
    }

    @JsonProperty("count")
    public @Nullable Integer getCount() {
        return count;
    }

    @JsonProperty("count")
    public void setCount(@Nullable Integer count) {
        this.count = count;
    }

    @JsonProperty("serial")
    public @Nullable Long getSerial() {
        return serial;
    }

    @JsonProperty("serial")
    public void setSerial(@Nullable Long serial) {
        this.serial = serial;
    }

    @JsonProperty("factor")
    public @Nullable Double getFactor() {
        return factor;
    }

    @JsonProperty("factor")
    public void setFactor(@Nullable Double factor) {
        this.factor = factor;
    }

    @JsonProperty("weight")
    public @Nullable BigDecimal getWeight() {
        return weight;
    }

    @JsonProperty("weight")
    public void setWeight(@Nullable BigDecimal weight) {
        this.weight = weight;
    }

    @JsonProperty("is-fastened")
    public @Nullable Boolean getFastened() {
        return fastened;
    }

    @JsonProperty("is-fastened")
    public void setFastened(@Nullable Boolean fastened) {
        this.fastened = fastened;
    }

    @JsonProperty("day")
    public @Nullable LocalDate getDay() {
        return day;
    }

    @JsonProperty("day")
    public void setDay(@Nullable LocalDate day) {
        this.day = day;
    }

    @JsonProperty("inner")
    public @Nullable Job getInner() {
        return inner;
    }

    @JsonProperty("inner")
    public void setInner(@Nullable Job inner) {
        this.inner = inner;
    }

    @JsonProperty("parts")
    public @Nullable List<Job> getParts() {
        return parts;
    }

    @JsonProperty("parts")
    public void setParts(@Nullable List<Job> parts) {
        this.parts = parts;
    }

    @JsonProperty("names")
    public @Nullable List<@Nullable String> getNames() {
        return names;
    }

    @JsonProperty("names")
    public void setNames(@Nullable List<@Nullable String> names) {
        this.names = names;
    }

    @JsonProperty("removed")
    public Set<String> getRemoved() {
        return removed;
    }

    @JsonProperty("removed")
    public void setRemoved(Set<String> removed) {
        this.removed = removed;
    }

    @JsonProperty("limits")
    public Map<String, Double> getLimits() {
        return limits;
    }

    @JsonProperty("limits")
    public void setLimits(Map<String, Double> limits) {
        this.limits = limits;
    }

    @JsonProperty("free")
    public @Nullable Object getFree() {
        return free;
    }

    @JsonProperty("free")
    public void setFree(@Nullable Object free) {
        this.free = free;
    }

    @JsonProperty("side")
    public @Nullable Side getSide() {
        return side;
    }

    @JsonProperty("side")
    public void setSide(@Nullable Side side) {
        this.side = side;
    }

    @JsonIgnore
    public String getDerived() {
        return "not a member";
    }
}
