What this program is made of, and the licences that each is to be had under; where there are several, any one of them.

<#list dependencyMap as entry>
${entry.getKey().groupId}:${entry.getKey().artifactId}:${entry.getKey().version}: <#list entry.getValue() as licence>${licence}<#sep>; </#list>
</#list>
