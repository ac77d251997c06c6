# Build: docker build -t underprop .
# Serve: docker run --rm -p 127.0.0.1:8080:8080 underprop
# Check: docker run --rm -v "$PWD/plans:/plans:ro" underprop check /plans
FROM maven:3.9.11-eclipse-temurin-17 AS build
WORKDIR /src
COPY .mvn .mvn
COPY pom.xml ./
COPY api api
COPY client client
COPY service service
COPY test-fixtures test-fixtures
RUN mvn -B -ntp -Dmaven.test.skip=true -pl service/app -am package

FROM eclipse-temurin:17.0.15_6-jre-jammy
RUN useradd --system --no-create-home --uid 10001 --shell /usr/sbin/nologin underprop
COPY --from=build /src/service/app/target/underprop.jar /app/underprop.jar
COPY LICENSE /app/LICENSE
# An archive of the classes that checking and serving load, made by this very JVM: starts take half the time. Where it does not fit (other
# flags, another JVM) it is passed over.
COPY service/app/demo/two-spans.yaml /tmp/plan.yaml
RUN set -eu; cd /tmp; \
    java -XX:DumpLoadedClassList=check.list -jar /app/underprop.jar check plan.yaml >check.txt || [ $? -eq 1 ]; \
    java -XX:DumpLoadedClassList=serve.list -jar /app/underprop.jar serve & server=$!; \
    until java -XX:DumpLoadedClassList=health.list -jar /app/underprop.jar health; do sleep 1; done; \
    bash -c 'exec 3<>/dev/tcp/127.0.0.1/8080; \
      printf "POST /v1/layout-analyses HTTP/1.0\r\nHost: localhost\r\nContent-Type: application/yaml\r\nContent-Length: %d\r\n\r\n" \
        "$(stat -c %s plan.yaml)" >&3; cat plan.yaml >&3; head -n 1 <&3 | grep " 200 "'; \
    kill "$server"; wait "$server" || true; \
    cat check.list serve.list health.list | awk '!seen[$0]++' >all.list; \
    java -Xshare:dump -XX:SharedClassListFile=all.list -XX:SharedArchiveFile=/app/underprop.jsa -cp /app/underprop.jar; \
    chmod 0444 /app/underprop.jsa; rm -f plan.yaml check.txt *.list
USER 10001
WORKDIR /app
EXPOSE 8080
HEALTHCHECK --interval=30s --timeout=5s --start-period=10s --retries=3 \
    CMD ["java", "-XX:SharedArchiveFile=/app/underprop.jsa", "-XX:TieredStopAtLevel=1", "-jar", "/app/underprop.jar", "health"]
# For a quick start, which README.md explains under "Start faster".
ENTRYPOINT ["java", "-XX:SharedArchiveFile=/app/underprop.jsa", "-XX:+UseParallelGC", \
    "-XX:Tier4InvocationThreshold=150000", "-XX:Tier4MinInvocationThreshold=60000", "-XX:Tier4CompileThreshold=300000", \
    "-XX:Tier4BackEdgeThreshold=1200000", "-XX:C1MaxInlineSize=20", "-XX:C1MaxInlineLevel=4", "-XX:-UsePerfData", "-Dsun.reflect.inflationThreshold=1000", \
    "-Djava.locale.providers=CLDR", "-jar", "/app/underprop.jar"]
# A container's own loopback answers nobody outside it, so the service listens on all of its addresses here, and who reaches it is
# up to -p. For others than this machine: serve --host 0.0.0.0 --tokens FILE, see "Running it for others" in README.md.
CMD ["serve", "--host", "0.0.0.0", "--port", "8080", "--let-anyone-in-without-token"]
